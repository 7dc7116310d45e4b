using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Tree;

/// <summary>
/// A whole number that may differ by size, as the trade writes it: <c>21</c> for all sizes, <c>21 (31, 41)</c> for three.
/// </summary>
/// <param name="Values">One number for all sizes, or one for each; null where a size does not work the step (<c>-</c> in the list).</param>
/// <param name="Span">Where it stands; a zero-length span where the number is understood, not written.</param>
public sealed record SizedNumber(EquatableArray<int?> Values, TextSpan Span)
{
    /// <summary>The same number for every size.</summary>
    public static SizedNumber Of(int value, TextSpan span = default) => new(value is >= 0 and < Shared ? Small[value] : [value], span);

    /// <summary>Most numbers of a pattern are small: their lists are shared.</summary>
    private const int Shared = 256;

    private static readonly EquatableArray<int?>[] Small = [.. Enumerable.Range(0, Shared).Select(value => EquatableArray.Create<int?>([value]))];

    /// <summary>True where every size has the same number.</summary>
    public bool IsPlain => Values.Count == 1;

    /// <summary>The number for a size (0-based); null where that size skips the step, or where the list is too short.</summary>
    public int? For(int size) => IsPlain ? Values[0] : size < Values.Count ? Values[size] : null;
}
