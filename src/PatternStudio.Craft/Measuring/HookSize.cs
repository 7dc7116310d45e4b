using System.Globalization;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>
/// A hook by its thickness. Millimetres are the one key that all makers share: letters and numbers are courtesy, and the same letter is sold in two sizes.
/// </summary>
/// <param name="Millimetres">Thickness of the shaft; 0.3 to 50 mm are sold.</param>
public readonly record struct HookSize(double Millimetres) : IComparable<HookSize>
{
    private const double Thinnest = 0.3;
    private const double Thickest = 50;

    /// <summary>US letters and numbers of yarn hooks by the tables of two shops that agree (reference on hooks, section 1).</summary>
    private static readonly (double Millimetres, string Name)[] UsNames =
    [
        (2.25, "B-1"), (2.75, "C-2"), (3.25, "D-3"), (3.5, "E-4"), (3.75, "F-5"), (4, "G-6"), (4.5, "7"), (5, "H-8"), (5.5, "I-9"), (6, "J-10"), (6.5, "K-10½"), (8, "L-11"), (9, "M/N-13"), (10, "N/P-15"),
    ];

    /// <summary>The US name ('H-8'); null where there is none or makers disagree.</summary>
    public string? UsName
    {
        get
        {
            foreach ((double size, string name) in UsNames)
                if (Math.Abs(size - Millimetres) < 0.01)
                    return name;
            return null;
        }
    }

    /// <summary>Reads '5 mm', '4,5mm hook', '5'. Letters alone are refused: 'G' is 4 or 4.25 mm.</summary>
    public static Parsed<HookSize> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<MeasureToken> tokens = MeasureScanner.Scan(text);
        var all = new TextSpan(0, text.Length);
        if (tokens.Count == 0 || tokens[0].Number is not { } number)
            return Parsed.Trouble<HookSize>("Write the hook in millimetres, such as '5 mm': letters and numbers differ from maker to maker.", all);
        if (tokens.Count > 1 && tokens[1].Word is not ("mm" or "hook" or "(")) return Parsed.Trouble<HookSize>($"'{MeasureReader.Words(text, tokens[1].Span)}' is not how hooks are measured here. Write millimetres, such as '5 mm'.", tokens[1].Span);
        return number is >= Thinnest and <= Thickest
            ? Parsed.Read(new HookSize(number))
            : Parsed.Trouble<HookSize>($"No hook is {MeasureReader.Words(text, tokens[0].Span)} mm thick. Give a thickness of 0.3 to 50 mm.", tokens[0].Span);
    }

    /// <inheritdoc/>
    public int CompareTo(HookSize other) => Millimetres.CompareTo(other.Millimetres);

    public static bool operator <(HookSize left, HookSize right) => left.Millimetres < right.Millimetres;

    public static bool operator >(HookSize left, HookSize right) => left.Millimetres > right.Millimetres;

    public static bool operator <=(HookSize left, HookSize right) => left.Millimetres <= right.Millimetres;

    public static bool operator >=(HookSize left, HookSize right) => left.Millimetres >= right.Millimetres;

    /// <summary>'5 mm (US H-8)'.</summary>
    public override string ToString() =>
        Millimetres.ToString("0.##", CultureInfo.InvariantCulture) + " mm" + (UsName is { } name ? $" (US {name})" : "");
}
