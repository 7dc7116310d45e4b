using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>Fractions as tape measures and patterns print them.</summary>
internal static class Fractions
{
    /// <summary>The fractions that have a character of their own.</summary>
    private static readonly (char Sign, int Top, int Bottom)[] Signs =
    [
        ('½', 1, 2), ('¼', 1, 4), ('¾', 3, 4), ('⅛', 1, 8), ('⅜', 3, 8), ('⅝', 5, 8), ('⅞', 7, 8), ('⅓', 1, 3), ('⅔', 2, 3),
    ];

    /// <summary>The value of '½'; null for any other character.</summary>
    public static double? ValueOf(char sign)
    {
        foreach ((char known, int top, int bottom) in Signs)
            if (known == sign)
                return (double)top / bottom;
        return null;
    }

    /// <summary>A number to the nearest part: 9.7 in quarters is '9¾'.</summary>
    /// <param name="parts">Parts of one: 4 for quarters.</param>
    public static string Write(double number, int parts)
    {
        long total = (long)Math.Round(Math.Abs(number) * parts, MidpointRounding.AwayFromZero);
        (long whole, long top) = Math.DivRem(total, parts);
        string sign = number < 0 && total > 0 ? "-" : "";
        if (top == 0) return sign + whole.ToString(CultureInfo.InvariantCulture);
        string fraction = WriteBelowOne((int)top, parts);
        return whole == 0 ? sign + fraction : sign + whole.ToString(CultureInfo.InvariantCulture) + fraction;
    }

    private static string WriteBelowOne(int top, int bottom)
    {
        while (top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);
        foreach ((char sign, int signTop, int signBottom) in Signs)
            if (signTop == top && signBottom == bottom)
                return sign.ToString();
        return $"{top}/{bottom}";
    }
}
