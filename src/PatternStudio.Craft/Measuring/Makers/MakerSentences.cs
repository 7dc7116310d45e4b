using System.Globalization;

namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>Why a number is left out or asked about, in sentences.</summary>
internal static class MakerSentences
{
    /// <param name="off">How many times the middle of the others it is.</param>
    public static string LeftOut(MakerMeasure measure, double off, Slip slip)
    {
        string far = string.Create(CultureInfo.InvariantCulture, $"{Name(measure)} {off:0.0#} times the middle of all makers: not counted.");
        return slip == Slip.None ? far + " No usual slip explains it; ask her." : $"{far} {Asked(slip)}";
    }

    public static string Asked(Slip slip) => slip switch
    {
        Slip.InchesAndCentimetres => "That is about an inch to a centimetre (2.54): was it measured in the other unit?",
        Slip.OtherLength => "Was it counted over another length than was written, such as 5 cm for 10 or an inch for four?",
        Slip.OtherTerms => "The stitches fit and the rows do not: were the stitches worked in the other terms, US for UK?",
        Slip.BlockingExchanged => "All others' counts change the other way: are before and after blocking exchanged?",
        Slip.WholeBalls => "It looks like whole balls: was what is left of the last ball weighed and taken off?",
        Slip.OuncesForGrams => "That is about a gram to an ounce (28.35): was it weighed in ounces?",
        Slip.SidesExchanged => "Width and height fit the other way round: are they exchanged?",
        Slip.HoursAndMinutes => "That is about a minute to an hour: were hours meant?",
        _ => "",
    };

    /// <summary>'Stitches to 10 cm are'.</summary>
    private static string Name(MakerMeasure measure) => measure switch
    {
        MakerMeasure.Stitches => "Stitches to 10 cm are",
        MakerMeasure.Rows => "Rows to 10 cm are",
        MakerMeasure.StitchesBefore => "Stitches before blocking are",
        MakerMeasure.RowsBefore => "Rows before blocking are",
        MakerMeasure.Width => "The width is",
        MakerMeasure.Height => "The height is",
        MakerMeasure.Yarn => "The yarn is",
        _ => "The time is",
    };
}
