using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>A length of fabric. Kept in millimetres; zero or more for anything measured, below zero only as a difference.</summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>1 in = 25.4 mm exactly (international inch).</summary>
    private const double MillimetresPerInch = 25.4;

    private Length(double millimetres) => Millimetres = millimetres;

    /// <summary>No length at all.</summary>
    public static readonly Length Zero;

    public double Millimetres { get; }

    public double Centimetres => Millimetres / 10;

    public double Inches => Millimetres / MillimetresPerInch;

    public static Length FromMillimetres(double millimetres) => new(millimetres);

    public static Length FromCentimetres(double centimetres) => new(centimetres * 10);

    public static Length FromInches(double inches) => new(inches * MillimetresPerInch);

    /// <summary>
    /// Reads '4½ in', '3 1/2"', '10,5 cm', '95 mm', '1.5 m', '5 ft', and '10 cm (4 in)' where both say the same. A unit is needed: 4 may be inches or centimetres.
    /// </summary>
    public static Parsed<Length> Parse(string text) => MeasureReader.ReadLength(text);

    public static Length operator +(Length left, Length right) => new(left.Millimetres + right.Millimetres);

    public static Length operator -(Length left, Length right) => new(left.Millimetres - right.Millimetres);

    public static Length operator *(Length length, double times) => new(length.Millimetres * times);

    public static Length operator *(double times, Length length) => length * times;

    public static Length operator /(Length length, double parts) => new(length.Millimetres / parts);

    /// <summary>How often the second goes into the first.</summary>
    public static double operator /(Length length, Length unit) => length.Millimetres / unit.Millimetres;

    public static bool operator <(Length left, Length right) => left.Millimetres < right.Millimetres;

    public static bool operator >(Length left, Length right) => left.Millimetres > right.Millimetres;

    public static bool operator <=(Length left, Length right) => left.Millimetres <= right.Millimetres;

    public static bool operator >=(Length left, Length right) => left.Millimetres >= right.Millimetres;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <summary>'25.5 cm': to the millimetre, which is finer than any tape measure is held.</summary>
    public string InCentimetres() => Centimetres.ToString("0.#", CultureInfo.InvariantCulture) + " cm";

    /// <summary>'9¾ in': to the quarter inch, as patterns state it (to the sixteenth below one inch).</summary>
    public string InInches() => Fractions.Write(Inches, Math.Abs(Inches) < 1 ? 16 : 4) + " in";

    /// <summary>
    /// As a pattern prints it, '25.5 cm (10 in)': centimetres to the half, inches to the quarter, each rounded from the unrounded length and never from the
    /// other, halves away from zero. Below 2 cm to the millimetre and the sixteenth, since a half centimetre is too coarse for a button band.
    /// </summary>
    public string ForPrint() => Math.Abs(Millimetres) < 20
        ? $"{InCentimetres()} ({Fractions.Write(Inches, 16)} in)"
        : $"{(Math.Round(Settled(Centimetres * 2), MidpointRounding.AwayFromZero) / 2).ToString("0.#", CultureInfo.InvariantCulture)} cm ({Fractions.Write(Settled(Inches), 4)} in)";

    /// <summary>Binary fractions make 10.25 cm a hair less than it is; a thousand-millionth put right before halves are rounded.</summary>
    private static double Settled(double number) => Math.Round(number, 9);

    /// <summary>'25.5 cm (10 in)'.</summary>
    public override string ToString() => $"{InCentimetres()} ({InInches()})";
}
