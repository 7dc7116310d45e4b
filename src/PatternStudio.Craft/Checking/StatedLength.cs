using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>A length as a statement writes it, in its own unit.</summary>
/// <param name="Number">In the unit written.</param>
/// <param name="HalfStep">Half of what it may have been rounded by: a whole number stands for half a unit either way.</param>
/// <param name="Text">'20 cm'.</param>
internal readonly record struct StatedLength(double Number, double HalfStep, string Text);

/// <summary>One length in two units.</summary>
/// <param name="Span">From the first to the second, in the text that was looked at.</param>
internal sealed record PairOfLengths(StatedLength Metric, StatedLength Inches, TextSpan Span, bool IsRough)
{
    private const double CentimetresPerInch = 2.54;

    /// <summary>10 cm = 4 in: the trade treats them as the same, 1.6 % apart.</summary>
    private const double TradeCentimetresPerInch = 2.5;

    /// <summary>What 'about' and 'approx' allow.</summary>
    private const double Rough = 0.05;

    /// <summary>
    /// True where one may be the other, rounded: centimetres to the half or whole, inches to the quarter, half or whole, by 2.54 or by the trade's 10 cm = 4 in.
    /// </summary>
    public bool Agrees
    {
        get
        {
            double rough = IsRough ? Rough : 0;
            double least = (Inches.Number - Inches.HalfStep) * TradeCentimetresPerInch * (1 - rough), most = (Inches.Number + Inches.HalfStep) * CentimetresPerInch * (1 + rough);
            return Metric.Number + Metric.HalfStep >= least - 1e-9 && Metric.Number - Metric.HalfStep <= most + 1e-9;
        }
    }

    /// <summary>To the quarter inch: '8¼'.</summary>
    public string MetricInInches => Quarters(Metric.Number / CentimetresPerInch);

    /// <summary>To the half centimetre: '22.5'.</summary>
    public string InchesInMetric => (Math.Round(Inches.Number * CentimetresPerInch * 2) / 2).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Quarters(double inches)
    {
        long quarters = (long)Math.Round(inches * 4);
        string part = (quarters % 4) switch { 1 => "¼", 2 => "½", 3 => "¾", _ => "" };
        return quarters / 4 > 0 || part.Length == 0 ? (quarters / 4).ToString(CultureInfo.InvariantCulture) + part : part;
    }
}
