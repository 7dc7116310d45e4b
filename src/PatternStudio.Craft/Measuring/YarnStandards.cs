namespace PatternStudio.Craft.Measuring;

/// <summary>A standard yarn weight: what the trade's table says of it. A range of the most common gauges, not a rule.</summary>
/// <param name="Number">0 (lace) to 7 (jumbo).</param>
/// <param name="Name">As the trade calls it.</param>
/// <param name="FewestStitches">Stitches to 10 cm with the thickest usual hook.</param>
/// <param name="MostStitches">Stitches to 10 cm with the thinnest usual hook.</param>
/// <param name="ThinnestHook">In millimetres.</param>
/// <param name="ThickestHook">In millimetres.</param>
/// <param name="InDouble">True where the stitches are double crochet (lace), else single crochet.</param>
public sealed record YarnWeightClass(int Number, string Name, double FewestStitches, double MostStitches, double ThinnestHook, double ThickestHook, bool InDouble = false)
{
    /// <summary>The range of stitch widths, narrowed to a hook where one is given: within the usual hooks the gauge goes from most to fewest stitches.</summary>
    public (Length Narrowest, Length Widest) StitchWidths(HookSize? hook)
    {
        Length narrow = Length.FromMillimetres(100 / MostStitches), wide = Length.FromMillimetres(100 / FewestStitches);
        if (hook is not { } known || ThickestHook <= ThinnestHook) return (narrow, wide);
        double at = Math.Clamp((known.Millimetres - ThinnestHook) / (ThickestHook - ThinnestHook), 0, 1);
        Length middle = narrow + ((wide - narrow) * at), half = (wide - narrow) / 4;
        return (Largest(narrow, middle - half), Smallest(wide, middle + half));
    }

    private static Length Largest(Length one, Length other) => one > other ? one : other;

    private static Length Smallest(Length one, Length other) => one < other ? one : other;
}

/// <summary>
/// The Craft Yarn Council's Standard Yarn Weight System, crochet columns (gauge in single crochet to 4 in, lace in double crochet; recommended hooks), as reprinted in a magazine of
/// October 2018 and on two craft pages; the reference tables on yarn weights tell where these differ.
/// </summary>
public static class YarnStandards
{
    /// <summary>Jumbo has no lower end in the table ('5 and fewer'); 3 and the hook of 25 mm are taken (no source).</summary>
    private static readonly YarnWeightClass[] Classes =
    [
        new(0, "lace", 32, 42, 1.5, 2.25, true),
        new(1, "super fine", 21, 32, 2.25, 3.5),
        new(2, "fine", 16, 20, 3.5, 4.5),
        new(3, "light", 12, 17, 4.5, 5.5),
        new(4, "medium", 11, 14, 5.5, 6.5),
        new(5, "bulky", 8, 11, 6.5, 9),
        new(6, "super bulky", 6, 9, 9, 16),
        new(7, "jumbo", 3, 5, 16, 25),
    ];

    /// <summary>The class of a number; null for numbers that are none.</summary>
    public static YarnWeightClass? Of(int number) => number >= 0 && number < Classes.Length ? Classes[number] : null;
}
