using System.Globalization;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Web.Shell;

/// <summary>
/// How numbers, lengths and days are said to whoever is looking. It is set for each request, and holds for the page that stays open after it, as a culture would; the
/// engine never asks for it: what it computes and stores is the same for everybody.
/// </summary>
public static class Manner
{
    private static readonly AsyncLocal<Preferences?> Looking = new();
    private static readonly Preferences Usual = new();
    private static readonly NumberFormatInfo Comma = new() { NumberDecimalSeparator = "," };

    /// <summary>The preferences of whoever is looking; the usual ones where nobody is signed in.</summary>
    public static Preferences Of => Looking.Value ?? Usual;

    /// <summary>The form of numbers.</summary>
    public static IFormatProvider Number => Of.Decimals == DecimalSign.Comma ? Comma : NumberFormatInfo.InvariantInfo;

    /// <summary>True where lengths are told in inches first.</summary>
    public static bool Inches => Of.Lengths == LengthUnit.Inches;

    /// <summary>From here on, and in what this calls, it is these.</summary>
    public static void Take(Preferences preferences) => Looking.Value = preferences;

    /// <summary>'25 Nov 2026', 'Nov 25, 2026', '25.11.2026' or '2026-11-25'.</summary>
    public static string Day(DateOnly day, bool withYear = true) => Day(day, Of.Dates, withYear);

    /// <summary>A day in a form of somebody's choice.</summary>
    public static string Day(DateOnly day, DateForm form, bool withYear = true) => day.ToString(form switch
    {
        DateForm.MonthDay => withYear ? "MMM d, yyyy" : "MMM d",
        DateForm.Dotted => withYear ? "d.M.yyyy" : "d.M.",
        DateForm.YearFirst => "yyyy-MM-dd",
        _ => withYear ? "d MMM yyyy" : "d MMM",
    }, CultureInfo.InvariantCulture);
}
