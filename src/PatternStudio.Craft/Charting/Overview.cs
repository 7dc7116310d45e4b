using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>The outline of a piece too large for every stitch: each row a block as long as its count.</summary>
internal sealed class Overview(WorkedPiece piece, int number, StitchForms forms)
{
    private const double Width = 60;
    private const double BlockHeight = 0.5;

    /// <summary>More blocks than this are one grey surface; several rows then share one.</summary>
    private const int MostBlocks = 300;

    public IEnumerable<DrawnRow> Draw()
    {
        long[] places = [.. piece.Rows.Select(row => RowTally.Of(row, forms).Places)];
        double scale = Width / Math.Max(1, places.Max());
        bool inRounds = Tones.InRounds(piece);
        int share = (piece.Rows.Count + MostBlocks - 1) / MostBlocks;
        for (int i = 0, block = 0; i < piece.Rows.Count; i += share, block++)
        {
            WorkedRow row = piece.Rows[i];
            double top = -BlockHeight * (block + 1);
            double half = Math.Max(0.2, places[i] * scale / 2);
            yield return new DrawnRow(number, i, LabelOf(row, places[i]), share > 1 && row.Status == RowStatus.Checked ? RowTone.Foundation : Tones.Of(row, inRounds), [], Marks(row, block, half, top));
        }
    }

    private static EquatableArray<Shape> Marks(WorkedRow row, int block, double half, double top)
    {
        var area = new Block(new Box(-half, top + 0.05, half, top + BlockHeight - 0.05));
        return block % 10 == 0 && row.Kind != RowKind.Foundation
            ? [area, new Words(new Point(-(Width / 2) - 1, top + (BlockHeight / 2)), row.Number.ToString(), 0.9, Anchor.End)]
            : [area];
    }

    private static string LabelOf(WorkedRow row, long places) =>
        row.Status == RowStatus.Checked ? $"{row.Label}: {places} stitches" : $"{row.Label}: not checked";
}
