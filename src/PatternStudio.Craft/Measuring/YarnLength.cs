using System.Globalization;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// How much yarn, end to end. A type apart from <see cref="Length"/>: forty metres of yarn and forty centimetres of fabric are never added.
/// Kept in metres.
/// </summary>
public readonly record struct YarnLength : IComparable<YarnLength>
{
    /// <summary>1 yd = 0.9144 m exactly (international yard).</summary>
    private const double MetresPerYard = 0.9144;

    private YarnLength(double metres) => Metres = metres;

    public static readonly YarnLength Zero;

    public double Metres { get; }

    public double Yards => Metres / MetresPerYard;

    public static YarnLength FromMetres(double metres) => new(metres);

    public static YarnLength FromYards(double yards) => new(yards * MetresPerYard);

    /// <summary>Reads '85 m', '93 yd', '85 m (93 yd)' where both say the same.</summary>
    public static Parsed<YarnLength> Parse(string text) => MeasureReader.ReadYarnLength(text);

    public static YarnLength operator +(YarnLength left, YarnLength right) => new(left.Metres + right.Metres);

    public static YarnLength operator -(YarnLength left, YarnLength right) => new(left.Metres - right.Metres);

    public static YarnLength operator *(YarnLength length, double times) => new(length.Metres * times);

    public static YarnLength operator /(YarnLength length, double parts) => new(length.Metres / parts);

    /// <summary>How often the second goes into the first: balls in a total.</summary>
    public static double operator /(YarnLength length, YarnLength unit) => length.Metres / unit.Metres;

    /// <inheritdoc/>
    public int CompareTo(YarnLength other) => Metres.CompareTo(other.Metres);

    public static bool operator <(YarnLength left, YarnLength right) => left.Metres < right.Metres;

    public static bool operator >(YarnLength left, YarnLength right) => left.Metres > right.Metres;

    public static bool operator <=(YarnLength left, YarnLength right) => left.Metres <= right.Metres;

    public static bool operator >=(YarnLength left, YarnLength right) => left.Metres >= right.Metres;

    /// <summary>'40 m (44 yd)'; below ten metres with one decimal.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Plain(Metres)} m ({Plain(Yards)} yd)");

    private static string Plain(double number) =>
        number.ToString(number < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);
}
