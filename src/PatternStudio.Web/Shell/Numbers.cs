using System.Globalization;

namespace PatternStudio.Web.Shell;

/// <summary>Numbers as people write and read them, in the manner of whoever is looking.</summary>
public static class Numbers
{
    /// <summary>Between a number and its unit, so that a line never ends between them (SI Brochure, 9th edition, 5.4.3: a space always separates the unit from the number).</summary>
    private const char Space = '\u00a0';

    /// <summary>As kept: '10.5'; empty for null.</summary>
    public static string Write(double? number) => number?.ToString("0.###", Manner.Number) ?? "";

    /// <summary>For a form: '4.50'; empty for null.</summary>
    public static string Money(decimal? amount) => amount?.ToString("0.00", Manner.Number) ?? "";

    /// <summary>A length to the half centimetre: '52.5'. A tape tells no more of crochet.</summary>
    public static string Centimetres(double cm) => (Math.Round(cm * 2) / 2).ToString("0.#", Manner.Number);

    /// <summary>A length to the quarter inch, as the trade writes it: '20¾'.</summary>
    public static string Inches(double cm)
    {
        long quarters = (long)Math.Round(cm / 2.54 * 4);
        string fraction = (quarters % 4) switch { 1 => "¼", 2 => "½", 3 => "¾", _ => "" };
        return quarters < 4 && fraction.Length > 0 ? fraction : $"{quarters / 4}{fraction}";
    }

    /// <summary>A finished length in the reader's unit: '52.5 cm', '20¾ in'.</summary>
    public static string Side(double cm) => Manner.Inches ? $"{Inches(cm)}{Space}in" : $"{Centimetres(cm)}{Space}cm";

    /// <summary>Width and height in the reader's unit: '20 × 19.5 cm'.</summary>
    public static string Sides(double widthCm, double heightCm) => SidesIn(Manner.Inches, widthCm, heightCm);

    /// <summary>The same in the other unit, to stand beside it.</summary>
    public static string OtherSides(double widthCm, double heightCm) => SidesIn(!Manner.Inches, widthCm, heightCm);

    /// <summary>A measure as taken, in the reader's unit and not rounded to what a tape tells: '10.16 cm', '4 in'.</summary>
    public static string Taken(double cm) => Manner.Inches ? $"{(cm / 2.54).ToString("0.##", Manner.Number)}{Space}in" : $"{Write(cm)}{Space}cm";

    /// <summary>Two measures as taken: '12 × 9 cm'.</summary>
    public static string Taken(double widthCm, double heightCm)
    {
        string width = Taken(widthCm);
        return $"{width[..width.LastIndexOf(Space)]} × {Taken(heightCm)}";
    }

    /// <summary>'1 250': thousands set off, so that long counts are read at a glance.</summary>
    public static string Count(long number) =>
        number.ToString("#,0", CultureInfo.InvariantCulture).Replace(",", "\u202f", StringComparison.Ordinal);

    /// <summary>Grams or metres: whole from ten on, one decimal below.</summary>
    public static string Amount(double amount) =>
        amount < 10 ? amount.ToString("0.#", Manner.Number) : Count((long)Math.Round(amount, MidpointRounding.AwayFromZero));

    /// <summary>'40 min', '3 h 20 min', '52 h': minutes are dust where hours are many.</summary>
    public static string Time(double minutes)
    {
        long whole = (long)Math.Round(minutes);
        return whole < 60 ? $"{whole}\u202fmin" : whole >= 1_200 || whole % 60 == 0 ? $"{Count((long)Math.Round(whole / 60.0))}\u202fh" : $"{whole / 60}\u202fh {whole % 60}\u202fmin";
    }

    private static string SidesIn(bool inches, double widthCm, double heightCm) =>
        inches ? $"{Inches(widthCm)} × {Inches(heightCm)}{Space}in" : $"{Centimetres(widthCm)} × {Centimetres(heightCm)}{Space}cm";

    /// <summary>'34 %'.</summary>
    public static string Percent(double share) => $"{Math.Round(share * 100):0}\u202f%";
}
