using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>Marks that a piece's own rows give: half of the yarn, the longest row, what must be left for the border.</summary>
internal static class PieceMarks
{
    private static readonly string[] BorderWords = ["border", "edging", "edge", "trim", "frill", "ruffle"];

    public static EquatableArray<ScheduledRow> Add(List<ScheduledRow> rows, Construction construction, EquatableArray<SectionYarn> sections, bool isWhole, MeasuringBasis basis)
    {
        if (!isWhole) return rows.ToEquatableArray();
        int half = rows.FindIndex(row => row.Share >= 0.5 - 1e-9);
        if (half >= 0) Mark(rows, half, ScheduleMarkKind.HalfUsed, "Half of the yarn is used.");
        if (Longest(rows, construction) is >= 0 and var longest) Mark(rows, longest, ScheduleMarkKind.LongestRow, "The longest row: from here on the piece narrows.");
        foreach (SectionYarn section in sections.Skip(1).Where(IsBorder))
            if (rows.FindIndex(row => row.Heading == section.From && (row.Section == section.Name || section.Name == "border")) is > 0 and var begins)
                Mark(rows, begins - 1, ScheduleMarkKind.LeaveForBorder, $"Leave {string.Join(" and ", section.Colours.Select(colour => Amount(colour, basis)))} for the {section.Name.ToLowerInvariant()} ({section.From} on).");
        return rows.ToEquatableArray();
    }

    private static bool IsBorder(SectionYarn section) => Array.Exists(BorderWords, word => section.Name.Contains(word, StringComparison.OrdinalIgnoreCase));

    private static string Amount(ColourYarn colour, MeasuringBasis basis)
    {
        string grams = basis.LabelOf(colour.Colour) is { } label ? $" ({label.WeightOf(colour.Length)})" : "";
        return $"{colour.Length.Metres:0.0} m{grams}" + (colour.Colour.Length > 0 ? $" of {colour.Colour}" : "");
    }

    /// <summary>0-based row where the shape turns; -1 where it does not: straight pieces, pieces that only grow or only narrow.</summary>
    private static int Longest(List<ScheduledRow> rows, Construction construction)
    {
        if (construction.Kind == ConstructionKind.Tiles) return construction.Grid is { Straight: 0 } grid && grid.Short > 1 ? rows.FindIndex(row => row.Number == grid.Short) : -1;
        if (construction.Kind is not (ConstructionKind.ShapedRows or ConstructionKind.CornerToCorner)) return -1;
        long most = rows.Max(row => row.Stitches ?? 0);
        int at = rows.FindIndex(row => row.Number > 0 && row.Stitches == most), last = rows.FindLastIndex(row => row.Stitches == most);
        return at > 0 && rows[at - 1].Number > 0 && last < rows.Count - 1 ? last : -1;
    }

    private static void Mark(List<ScheduledRow> rows, int at, ScheduleMarkKind kind, string text) => rows[at] = rows[at] with { Marks = [.. rows[at].Marks, new ScheduleMark(kind, text)] };
}
