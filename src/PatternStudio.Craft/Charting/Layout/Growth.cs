using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>
/// Lays a piece out as it grows: each row on the edge that its feet stand on, outward from it. Knows no construction, so it serves ovals, borders, tiles and
/// whatever else the hook can do; the net then comes to rest from here.
/// </summary>
internal sealed class Growth(PieceCells piece, StitchForms forms)
{
    /// <summary>Up to so many cells the fabric rests after every row; later rows of larger ones go on from where it then lies.</summary>
    private const int RestsUpTo = 1500;

    private const int Sweeps = 40;

    /// <summary>A row pulls its stitches together so many times harder than their feet pull them apart.</summary>
    private const double Together = 3;

    private readonly List<LaidRow> rows = [];

    public IReadOnlyList<LaidRow> Lay()
    {
        long cells = 0;
        foreach (WorkedRow row in piece.Piece.Rows)
        {
            rows.Add(row.Index == 0 && row.Kind == RowKind.Foundation ? Start(row) : Next(row));
            cells += row.Length;
            if (cells <= RestsUpTo && rows.Count > 2) Settle(6, 20);
        }
        return rows;
    }

    /// <summary>A row grown on rows that lie already.</summary>
    public LaidRow On(IReadOnlyList<LaidRow> below, WorkedRow row)
    {
        rows.Clear();
        rows.AddRange(below);
        return Next(row);
    }

    private void Settle(int turns, int steps)
    {
        List<LaidRow> settled = Relaxed.Of(rows, turns, steps);
        rows.Clear();
        rows.AddRange(settled);
    }

    private LaidCell Laid(WorkedRow row, int at, Point top, Point up) => new(piece.Cells[row.Index][at], forms.Of(piece.Cells[row.Index][at].Stitch), top, up, piece.Widths[row.Index][at]);

    /// <summary>The foundation: a line to the right, or a ring, or, where rounds stand in one of its chains, a centre.</summary>
    private LaidRow Start(WorkedRow row)
    {
        Cell[] cells = piece.Cells[row.Index];
        bool centre = row.Joined || cells.All(cell => cell.Kind == CellKind.Ring) || StandsInOne(row);
        if (centre)
        {
            double radius = row.Joined ? Rings.Radius(row.Chains()) : cells.All(cell => cell.Kind == CellKind.Ring) ? Rings.MagicRadius : Rings.ChainRadius;
            LaidCell[] round = [.. cells.Select((cell, i) => Laid(row, i, Turned(i + 0.5, cells.Length) * radius, Turned(i + 0.5, cells.Length)))];
            return new LaidRow(row, row.Index, round, default) { IsCentre = true, Closed = true, Radius = radius };
        }
        var along = 0.0;
        var laid = new LaidCell[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            double width = piece.Widths[row.Index][i];
            laid[i] = Laid(row, i, new Point(along + (width / 2), 0), new Point(0, -1));
            along += width;
        }
        return new LaidRow(row, row.Index, laid, default);
    }

    /// <summary>A direction, anticlockwise from the bottom.</summary>
    private static Point Turned(double share, double of)
    {
        double angle = 2 * Math.PI * (PolygonGround.Bottom + (share / of));
        return new Point(Math.Cos(angle), -Math.Sin(angle));
    }

    private bool StandsInOne(WorkedRow foundation) =>
        piece.Piece.Rows.FirstOrDefault(row => row.Index > foundation.Index && row.Status == RowStatus.Checked) is { Kind: RowKind.Round } first
        && first.Cells().SelectMany(cell => cell.Feet).Where(foot => foot.Row == foundation.Index).Select(foot => foot.Place).Distinct().Count() == 1;

    private LaidRow Next(WorkedRow row)
    {
        if (row.Status != RowStatus.Checked) return new LaidRow(row, row.Index, [], default);
        Cell[] cells = piece.Cells[row.Index];
        bool closed = row.Kind == RowKind.Round;
        Sprout[] sprouts = new Sprouts(rows, forms, piece.Widths[row.Index], closed, piece.Taller[row.Index]).Of(cells);
        Point[] tops = Spread(piece.Widths[row.Index], sprouts, closed);
        var laid = new LaidCell[cells.Length];
        for (int i = 0; i < cells.Length; i++) laid[i] = Laid(row, i, tops[i], sprouts[i].Up) with { Ground = sprouts[i].OnEdge ? sprouts[i].Base : null };
        if (rows is [{ IsCentre: false } foundation]) rows[0] = StandUp(foundation, cells);
        return Labels.On(Uprights.Of(new LaidRow(row, row.Index, laid, default) { Closed = closed, Taller = piece.Taller[row.Index], Out = piece.Radius[row.Index] }));
    }

    /// <summary>Chains skipped at the end of the foundation stand up, unless the first row draws them as its own.</summary>
    private static LaidRow StandUp(LaidRow foundation, Cell[] first)
    {
        bool drawnByRow = Array.Exists(first, cell => cell.Kind == CellKind.TurningChain || cell.Feet.Any(foot => foot.Kind == FootKind.RowEnd));
        return Uprights.Of(foundation with { Cells = [.. foundation.Cells.Select(cell => cell.Width > 0 ? cell : cell with { Stance = drawnByRow ? Stance.Hidden : Stance.Upright })] });
    }

    /// <summary>Neighbours hold their distance, feet pull each stitch right above them.</summary>
    private static Point[] Spread(double[] widths, Sprout[] sprouts, bool closed)
    {
        Point[] tops = [.. sprouts.Select(sprout => sprout.Top)];
        int[] taking = [.. Enumerable.Range(0, widths.Length).Where(i => widths[i] > 0)];
        if (taking.Length < 2) return tops;
        int sense = SenseOf(tops, sprouts, taking);
        for (int sweep = 0; sweep < Sweeps; sweep++)
            for (int k = 0; k < taking.Length; k++)
            {
                int i = taking[sweep % 2 == 0 ? k : taking.Length - 1 - k];
                int place = sweep % 2 == 0 ? k : taking.Length - 1 - k;
                Point pull = sprouts[i].Stands ? sprouts[i].Top : new Point(0, 0);
                double weight = sprouts[i].Stands ? 1 : 0;
                Pull(place - 1, 1);
                Pull(place + 1, -1);
                if (weight > 0) tops[i] = pull * (1 / weight);

                void Pull(int beside, int side)
                {
                    if ((beside < 0 || beside >= taking.Length) && !closed) return;
                    int j = taking[(beside + taking.Length) % taking.Length];
                    Point up = (sprouts[i].Up + sprouts[j].Up).Unit();
                    double apart = (widths[i] + widths[j]) / 2;
                    pull += (tops[j] + (up.Right() * (sense * side * apart))) * Together;
                    weight += Together;
                }
            }
        return tops;
    }

    private static int SenseOf(Point[] tops, Sprout[] sprouts, int[] taking)
    {
        double turn = 0;
        for (int k = 0; k + 1 < taking.Length; k++)
        {
            Point way = tops[taking[k + 1]] - tops[taking[k]];
            Point right = sprouts[taking[k]].Up.Right();
            turn += (way.X * right.X) + (way.Y * right.Y);
        }
        return turn < 0 ? -1 : 1;
    }
}
