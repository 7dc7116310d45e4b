namespace PatternStudio.Studio.Materials;

/// <summary>From stored SI base units to the units of the tape measure and the scales, without the dust of binary fractions.</summary>
internal static class Si
{
    public static double Centimetres(double metres) => Math.Round(metres * 100, 6);

    public static double? Centimetres(double? metres) => metres is { } known ? Centimetres(known) : null;

    public static double Grams(double kilograms) => Math.Round(kilograms * 1000, 6);

    public static double? Grams(double? kilograms) => kilograms is { } known ? Grams(known) : null;

    public static double? Millimetres(double? metres) => metres is { } known ? Math.Round(known * 1000, 6) : null;
}
