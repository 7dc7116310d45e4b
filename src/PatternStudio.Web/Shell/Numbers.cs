using System.Globalization;

namespace PatternStudio.Web.Shell;

/// <summary>Numbers as people write and read them.</summary>
public static class Numbers
{
    /// <summary>For a form: '10.5'; empty for null.</summary>
    public static string Write(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";

    /// <summary>For a form: '4.50'; empty for null.</summary>
    public static string Money(decimal? amount) => amount?.ToString("0.00", CultureInfo.InvariantCulture) ?? "";

    /// <summary>A length to the half centimetre: '52.5'. A tape tells no more of crochet.</summary>
    public static string Centimetres(double cm) => (Math.Round(cm * 2) / 2).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A length to the quarter inch, as the trade writes it: '20¾'.</summary>
    public static string Inches(double cm)
    {
        long quarters = (long)Math.Round(cm / 2.54 * 4);
        string fraction = (quarters % 4) switch { 1 => "¼", 2 => "½", 3 => "¾", _ => "" };
        return quarters < 4 && fraction.Length > 0 ? fraction : $"{quarters / 4}{fraction}";
    }

    /// <summary>'1 250': thousands set off, so that long counts are read at a glance.</summary>
    public static string Count(long number) =>
        number.ToString("#,0", CultureInfo.InvariantCulture).Replace(",", "\u202f", StringComparison.Ordinal);

    /// <summary>Grams or metres: whole from ten on, one decimal below.</summary>
    public static string Amount(double amount) =>
        amount < 10 ? amount.ToString("0.#", CultureInfo.InvariantCulture) : Count((long)Math.Round(amount, MidpointRounding.AwayFromZero));

    /// <summary>'40 min', '3 h 20 min', '52 h': minutes are dust where hours are many.</summary>
    public static string Time(double minutes)
    {
        long whole = (long)Math.Round(minutes);
        return whole < 60 ? $"{whole}\u202fmin" : whole >= 1_200 || whole % 60 == 0 ? $"{Count((long)Math.Round(whole / 60.0))}\u202fh" : $"{whole / 60}\u202fh {whole % 60}\u202fmin";
    }

    /// <summary>'34 %'.</summary>
    public static string Percent(double share) => $"{Math.Round(share * 100):0}\u202f%";
}
