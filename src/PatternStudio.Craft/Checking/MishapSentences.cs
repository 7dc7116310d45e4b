using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>What went wrong while working, said in a sentence for a maker: what is wrong, where, and what to look at.</summary>
internal static class MishapSentences
{
    public static Finding ToFinding(Mishap mishap, string onlyIn) => mishap.Kind switch
    {
        MishapKind.CountDiffers => CountDiffers(mishap, onlyIn),
        MishapKind.PastTheEnd => Say(FindingCodes.PastTheEnd, mishap, onlyIn, PastTheEnd(mishap)),
        MishapKind.LeftOver => Say(FindingCodes.StitchesLeft, mishap, onlyIn,
            $"{mishap.Row} leaves {Count(mishap.Found, "stitch", "stitches")} of {mishap.Met} unworked here. Work into {(mishap.Found == 1 ? "it" : "them")}, or say that {(mishap.Found == 1 ? "it is" : "they are")} left unworked."),
        MishapKind.RepeatUneven => Say(FindingCodes.RepeatUneven, mishap, onlyIn, RepeatUneven(mishap)),
        MishapKind.OtherKind => Say(FindingCodes.OtherStitch, mishap, onlyIn,
            $"{mishap.Row} works into the next {mishap.Named} here, but what comes next is: {mishap.Met}. Name that, or skip it first."),
        MishapKind.NoSuchPlace => Say(FindingCodes.NoSuchPlace, mishap, onlyIn,
            $"{mishap.Row} asks for a place that {mishap.Met} does not have: {mishap.Named}."),
        MishapKind.TurningChainDisagrees => Say(FindingCodes.TurningChainDisagrees, mishap, onlyIn,
            $"{mishap.Row} works into the top of the turning chain, but the ch {mishap.Wanted} at the start of {mishap.Met} does not count as a stitch."),
        MishapKind.JoinToNothing => Say(FindingCodes.JoinToNothing, mishap, onlyIn,
            $"{mishap.Row} is joined to the first {mishap.Named}, but it has none."),
        MishapKind.NoSuchRow => Say(FindingCodes.NoSuchRow, mishap, onlyIn,
            mishap.Named.Length == 0 ? $"{mishap.Row} repeats a row that has not been worked." : $"Row {mishap.Named} is to be repeated here, but no row before this one has that number."),
        MishapKind.RowNumberRepeated => Say(FindingCodes.RowNumberRepeated, mishap, onlyIn,
            $"This is numbered {mishap.Found}, but the next number is {mishap.Wanted}. Number the rows without doubles."),
        MishapKind.RowNumberMissing => Say(FindingCodes.RowNumberMissing, mishap, onlyIn,
            mishap.Found - mishap.Wanted == 1 ? $"Number {mishap.Wanted} is missing before this row." : $"Numbers {mishap.Wanted} to {mishap.Found - 1} are missing before this row."),
        MishapKind.NoFoundation => Say(FindingCodes.NoFoundation, mishap, onlyIn,
            $"{mishap.Row} works into a row below, but there is none yet. Begin with a chain, a ring or foundation stitches."),
        MishapKind.TooLarge => Say(FindingCodes.TooLarge, mishap, onlyIn, $"{mishap.Row} asks for more stitches than can be worked. Check the numbers here."),
        _ => Say(FindingCodes.NotWorked, mishap, onlyIn, $"{mishap.Row} is read, but this way of working is not worked out: the row is not checked."),
    };

    private static Finding CountDiffers(Mishap mishap, string onlyIn)
    {
        string thing = mishap.Named == "st" ? "sts" : mishap.Named;
        string told = $"{mishap.Row} states {mishap.Wanted} {thing}, but working it gives {mishap.Found}.";
        if (mishap.NextRowAgreesWithWorked) told += $" The row after it fits {mishap.Found}, so the stated number is likely the slip.";
        Finding finding = Say(FindingCodes.CountDiffers, mishap, onlyIn, told);
        return finding;
    }

    private static string PastTheEnd(Mishap mishap) => mishap switch
    {
        { Named: "ch", Met: "" } => $"{mishap.Row} counts {mishap.Wanted} chains back from the hook, but only {mishap.Found} were made.",
        { Found: 0 } => $"{mishap.Row} runs out here: all of {mishap.Met} is worked already.",
        _ => $"{mishap.Row} runs out here: {mishap.Met} has {mishap.Found} {mishap.Named} in all, and this needs more.",
    };

    private static string RepeatUneven(Mishap mishap) => mishap.Wanted == 0
        ? $"The repeat does not come out even: after the last whole repeat {Count(mishap.Found, "stitch is", "stitches are")} left in {mishap.Met}."
        : $"The repeat does not come out even: it leaves {Count(mishap.Found, "stitch", "stitches")} of {mishap.Met}, and {mishap.Wanted} should be left after it.";

    private static Finding Say(string code, Mishap mishap, string onlyIn, string sentence) =>
        new(code, FindingCodes.SeverityOf(code), mishap.Span, onlyIn.Length > 0 ? $"Size {onlyIn}: {sentence}" : sentence) { Size = onlyIn };

    private static string Count(long number, string one, string many) => $"{number} {(number == 1 ? one : many)}";
}
