using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Draws one piece stitch by stitch.</summary>
/// <param name="mostRows">How many rows to draw; the rest is named in a gap.</param>
internal sealed class PieceChart(WorkedPiece piece, int number, StitchForms forms, ChartNames names, KeyMaker key, int mostRows = int.MaxValue)
{
    private const double NumberSize = 0.8;

    /// <summary>Wider spacing lowers fanned stitches, which lowers the rows again; it settles at once.</summary>
    private const int Passes = 3;

    public IEnumerable<DrawnRow> Draw()
    {
        Construction construction = ConstructionFinder.Find(piece, forms);
        Ground ground = GroundOf(construction);
        IReadOnlyList<PlacedRow> rows = Place(piece with { Rows = piece.Rows.Take(mostRows).ToEquatableArray() }, construction, ground);
        var symbols = new CellSymbols(rows, ground, names);
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].Row.Status == RowStatus.Checked)
            {
                key.Add(rows[i]);
                yield return new DrawnRow(number, i, LabelOf(rows[i].Row), Tones.Of(rows[i].Row, InRounds), symbols.Of(rows[i]), Marks(rows[i], ground));
                continue;
            }
            int last = i;
            while (last + 1 < rows.Count && rows[last + 1].Row.Status != RowStatus.Checked) last++;
            yield return Gap(rows, i, NotDrawn(rows[i].Row, rows[last].Row, "not checked, not drawn"), ground);
            i = last;
        }
        if (rows.Count < piece.Rows.Count)
            yield return Gap(rows, rows.Count, NotDrawn(piece.Rows[rows.Count], piece.Rows[^1], "not drawn here"), ground);
    }

    private static string NotDrawn(WorkedRow first, WorkedRow last, string why) =>
        first == last ? $"{LabelOf(first)}: {why}" : $"{LabelOf(first)} to {LabelOf(last)}: {why}";

    private bool InRounds => Tones.InRounds(piece);

    /// <summary>A tube has no centre: its rounds lie flat, each begun at the same side.</summary>
    private Ground GroundOf(Construction construction) => construction.Kind switch
    {
        ConstructionKind.Polygon => new PolygonGround(construction.Corners),
        ConstructionKind.HalfCircle => new HalfRoundGround(),
        ConstructionKind.Tube => new FlatGround(),
        _ => InRounds ? new RoundGround() : new FlatGround(),
    };

    /// <summary>A square on its corner is drawn as one: its stitches are spaced so that the longest row is as long as all rows are high.</summary>
    private IReadOnlyList<PlacedRow> Place(WorkedPiece drawn, Construction construction, Ground ground)
    {
        IReadOnlyList<PlacedRow> rows = new Placer(drawn, forms, construction, ground, 1).Place();
        for (int pass = 0; construction.Kind == ConstructionKind.CornerToCorner && pass < Passes; pass++)
        {
            double height = rows[^1].High - rows[0].High;
            double stitches = rows.Max(row => row.Cells.Sum(cell => RowTally.Width(cell.Cell)));
            rows = new Placer(drawn, forms, construction, ground, Math.Clamp(height / stitches, 0.6, 1.8)).Place();
        }
        return rows;
    }

    private static string LabelOf(WorkedRow row) =>
        row.Label.Length > 0 ? row.Label : row.Kind == RowKind.Foundation ? "Foundation" : $"{(row.Kind == RowKind.Round ? "Rnd" : "Row")} {row.Number}";

    private static EquatableArray<Shape> Marks(PlacedRow row, Ground ground) =>
        row.Row.Kind == RowKind.Foundation || row.Low < 0
            ? []
            : [new Words(ground.At(row.LabelAt, (row.Low + row.MeanTop) / 2), row.Row.Number.ToString(), NumberSize)];

    private DrawnRow Gap(IReadOnlyList<PlacedRow> rows, int first, string label, Ground ground)
    {
        Box below = rows.Take(first).SelectMany(row => row.Cells).Aggregate(Box.Empty, (box, cell) => box.With(ground.At(cell.U, cell.T)));
        if (below.IsEmpty) below = new Box(0, 0, 0, 0);
        var at = new Point((below.Left + below.Right) / 2, below.Top - 1.4);
        var words = new Words(at, label, NumberSize);
        Box around = words.Bounds.Grow(0.3);
        return new DrawnRow(number, first, label, RowTone.Gap, [], [
            new Line(new Point(around.Left, around.Bottom), new Point(around.Right, around.Bottom)), words,
            new Line(new Point(around.Left, around.Top), new Point(around.Right, around.Top))]);
    }
}
