using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>What stitches are called in a chart's captions and key.</summary>
internal sealed class ChartNames(Terminology terminology)
{
    private static readonly Dictionary<string, (string Us, string UsFull, string Uk, string UkFull)> Plain = new()
    {
        ["ch"] = ("ch", "chain", "ch", "chain"),
        ["slst"] = ("sl st", "slip stitch", "ss", "slip stitch"),
        ["sc"] = ("sc", "single crochet", "dc", "double crochet"),
        ["hdc"] = ("hdc", "half double crochet", "htr", "half treble"),
        ["dc"] = ("dc", "double crochet", "tr", "treble"),
        ["tr"] = ("tr", "treble crochet", "dtr", "double treble"),
        ["dtr"] = ("dtr", "double treble crochet", "trtr", "triple treble"),
    };

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
        Plain.TryGetValue(id.Value, out var names) ? terms == Terminology.Us ? names.Us : names.Uk : id.Value;

    /// <summary>'sc: single crochet'.</summary>
    public static string Full(StitchId id, Terminology terms) =>
        Plain.TryGetValue(id.Value, out var names) ? terms == Terminology.Us ? $"{names.Us}: {names.UsFull}" : $"{names.Uk}: {names.UkFull}" : id.Value;
}
