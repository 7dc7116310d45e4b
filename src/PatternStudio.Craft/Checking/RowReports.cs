using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Checking;

/// <summary>Turns worked rows into the reports that screens and files show.</summary>
internal static class RowReports
{
    public static EquatableArray<RowReport> Of(Fabric fabric, SourceText source) =>
        fabric.Pieces.SelectMany(piece => piece.Rows).Where(row => row.Kind != RowKind.Foundation).Select(row => Of(row, source)).ToEquatableArray();

    public static ReadSummary Summary(EquatableArray<RowReport> rows) => new(
        rows.Count,
        rows.Count(row => row.Status != RowStatus.NotRead),
        rows.Count(row => row.Status == RowStatus.Checked));

    private static RowReport Of(WorkedRow row, SourceText source) => new(
        row.Section,
        row.Number,
        row.Label,
        source.Locate(row.CalledBy.Start).Line,
        row.Status,
        row.Side == FabricSide.Right ? "RS" : "WS",
        row.Status == RowStatus.Checked ? row.Total : null,
        row.Stated?.Text,
        row.CountAgrees,
        ToDictionary(row.Counts),
        ToDictionary(row.Spaces)) { SampleChains = row.SampleChains };

    private static Dictionary<string, long> ToDictionary(EquatableArray<KeyValuePair<string, long>> pairs) => new(pairs);
}
