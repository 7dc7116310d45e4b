using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>What stitches are called in a chart's captions and key.</summary>
internal sealed class ChartNames(Terminology terminology)
{
    public Terminology Terminology => terminology;

    /// <summary>The abbreviation of a cell.</summary>
    public string Short(Cell cell) => cell.Kind switch
    {
        CellKind.Stitch => Short(cell.Stitch, terminology),
        CellKind.Chains or CellKind.TurningChain => $"ch {cell.Chains}",
        CellKind.FoundationChain => "ch",
        CellKind.Ring => cell.Chains == 0 ? "magic ring" : $"ring of {cell.Chains} ch",
        CellKind.Picot => $"ch-{cell.Chains} picot",
        _ => Short(StitchId.SlipStitch, terminology),
    };

    /// <summary>The abbreviation of a stitch; a designer's own abbreviation as it is.</summary>
    public static string Short(StitchId id, Terminology terms) =>
        Vocabulary.Standard.Find(id)?.Abbreviation(terms) ?? id.Value;

    /// <summary>'sc: single crochet'.</summary>
    public static string Full(StitchId id, Terminology terms) =>
        Vocabulary.Standard.Find(id) is { } term ? FullOf(term.Names(terms)) : id.Value;

    private static string FullOf(EquatableArray<string> names) =>
        names.Count < 2 || names[0] == names[1] ? names[0] : $"{names[0]}: {names[1]}";
}
