using System.Text;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Tells a chart in words, for those who don't see it.</summary>
internal static class ChartWords
{
    /// <summary>Longer lists tire the listener; the row groups of the drawing carry their own labels.</summary>
    private const int MostRows = 12;

    public static string Describe(Fabric fabric, int? only)
    {
        var words = new StringBuilder("Crochet chart.");
        for (int i = 0; i < fabric.Pieces.Count; i++)
            if ((only ?? i) == i)
                Describe(fabric.Pieces[i], words);
        return words.ToString();
    }

    private static void Describe(WorkedPiece piece, StringBuilder words)
    {
        WorkedRow[] rows = [.. piece.Rows.Where(row => row.Kind != RowKind.Foundation)];
        if (rows.Length == 0) return;
        if (piece.Name.Length > 0) words.Append(' ').Append(piece.Name).Append(':');
        words.Append(' ').Append(rows.Length).Append(rows.Length == 1 ? " row or round." : " rows or rounds.");
        foreach (WorkedRow row in rows.Take(MostRows)) words.Append(' ').Append(Describe(row));
        if (rows.Length > MostRows) words.Append(" And so on; the last: ").Append(Describe(rows[^1]));
    }

    private static string Describe(WorkedRow row) =>
        row.Status == RowStatus.Checked ? $"{row.Label}: {row.Total} stitches." : $"{row.Label}: not checked.";
}
