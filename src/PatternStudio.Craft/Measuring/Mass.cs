using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>What yarn or a swatch weighs on the kitchen scales. Kept in grams.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    /// <summary>1 oz = 28.349523125 g (international avoirdupois ounce).</summary>
    private const double GramsPerOunce = 28.349523125;

    private Mass(double grams) => Grams = grams;

    public double Grams { get; }

    public double Ounces => Grams / GramsPerOunce;

    public static Mass FromGrams(double grams) => new(grams);

    public static Mass FromOunces(double ounces) => new(ounces * GramsPerOunce);

    /// <summary>Reads '12 g', '0,5 oz', '1 1/2 lb', '0.1 kg', and '100 g (3.5 oz)' where both say the same.</summary>
    public static Parsed<Mass> Parse(string text) => MeasureReader.ReadMass(text);

    public static Mass operator +(Mass left, Mass right) => new(left.Grams + right.Grams);

    public static Mass operator -(Mass left, Mass right) => new(left.Grams - right.Grams);

    public static Mass operator *(Mass mass, double times) => new(mass.Grams * times);

    public static Mass operator /(Mass mass, double parts) => new(mass.Grams / parts);

    /// <summary>How often the second goes into the first.</summary>
    public static double operator /(Mass mass, Mass unit) => mass.Grams / unit.Grams;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);

    public static bool operator <(Mass left, Mass right) => left.Grams < right.Grams;

    public static bool operator >(Mass left, Mass right) => left.Grams > right.Grams;

    public static bool operator <=(Mass left, Mass right) => left.Grams <= right.Grams;

    public static bool operator >=(Mass left, Mass right) => left.Grams >= right.Grams;

    /// <summary>'12.5 g'.</summary>
    public override string ToString() => Grams.ToString("0.#", CultureInfo.InvariantCulture) + " g";
}
