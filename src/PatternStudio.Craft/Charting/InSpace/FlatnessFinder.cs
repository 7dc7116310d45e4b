using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.InSpace;

/// <summary>
/// Finds whether a piece in rounds lies flat, by letting its net come to rest in space. The published rules for flat circles (6 sc, 8 hdc, 12 dc more each round) are what
/// stitch heights come from (see <see cref="FabricHeight"/>), so the two agree; 4 sc make a bowl and 9 ruffle.
/// </summary>
public static class FlatnessFinder
{
    /// <summary>More cells than this are judged by their counts alone, not in space.</summary>
    private const long MostInSpace = 2500;

    /// <summary>
    /// A round of fewer stitches than this share of a flat one draws in; of more than that share it waves. Published numbers for the same stitch differ as far (dc 10 to 12, sc 6 to
    /// 8 with 8 ruffling for some), since yarn gives.
    /// </summary>
    private const double Least = 0.8;
    private const double Most = 1.4;

    /// <summary>In space a round waves from a smaller share on.</summary>
    private const double MostInPlane = 1.36;

    /// <summary>In space: how steep a round may rise (rise per length of its stitches), and how much longer than a circle about its middle it may be.</summary>
    private const double Steep = 0.25;
    private const double Wavy = 1.06;
    private const int ClosesUp = 8;
    private const int Turns = 100;
    private const int Steps = 12;

    /// <summary>Those of the pieces of which it is known, in the order worked.</summary>
    public static EquatableArray<PieceFlatness> FindAll(IEnumerable<WorkedPiece> pieces, StitchForms forms) =>
        pieces.Select(piece => Find(piece, forms)).Where(flat => flat.Shape != Shape3.NotKnown).ToEquatableArray();

    /// <summary>Whether a piece lies flat. Pieces in rows have no rounds to tell of, tubes are not meant to, lace gives: <see cref="Shape3.NotKnown"/>.</summary>
    public static PieceFlatness Find(WorkedPiece piece, StitchForms forms)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(forms);
        if (!Tones.InRounds(piece) || piece.Rows.Any(row => row.Status != RowStatus.Checked)) return new PieceFlatness(piece.Name, Shape3.NotKnown, [], "");
        if (new Layouts(piece, forms).IsTube) return new PieceFlatness(piece.Name, Shape3.NotKnown, [], "");
        RoundFlatness[] rounds = [.. ByCounts(piece, forms)];
        if (rounds.Length == 0) return new PieceFlatness(piece.Name, Shape3.NotKnown, [], "");
        if (piece.Rows.Sum(row => row.Length) <= MostInSpace) rounds = InSpace(piece, forms, rounds);
        rounds = [.. Lasting(rounds)];
        Shape3 whole = rounds.Select(round => round.Shape).FirstOrDefault(shape => shape is Shape3.Cupped or Shape3.Ruffled, rounds.Any(round => round.Shape == Shape3.NotKnown) ? Shape3.NotKnown : Shape3.Flat);
        return new PieceFlatness(piece.Name, whole, rounds.ToEquatableArray(), whole == Shape3.NotKnown ? "" : FlatnessWords.Tell(rounds));
    }

    /// <summary>
    /// One round alone makes no bowl and no ruffle, and a first round gives as its ring is drawn tight or not: what does not last to the next round is flat.
    /// </summary>
    private static IEnumerable<RoundFlatness> Lasting(RoundFlatness[] rounds)
    {
        for (int i = 0; i < rounds.Length; i++)
        {
            bool lasts = (i > 0 && rounds[i - 1].Shape == rounds[i].Shape) || (i + 1 < rounds.Length && rounds[i + 1].Shape == rounds[i].Shape);
            yield return lasts || rounds[i].Shape == Shape3.NotKnown ? rounds[i] : rounds[i] with { Shape = Shape3.Flat };
        }
    }

    /// <summary>Chains give way: how lace lies is for the blocking board to say.</summary>
    private static bool IsLace(WorkedRow row) => row.Runs.Any(run => run.Unit.Any(cell => cell.Kind == CellKind.Chains));

    /// <summary>A flat round is as long as 2π times its distance from the centre.</summary>
    private static IEnumerable<RoundFlatness> ByCounts(WorkedPiece piece, StitchForms forms)
    {
        WorkedRow centre = piece.Rows[0];
        double inside = centre.Kind != RowKind.Foundation ? 0 : centre.Joined ? Open(centre.Chains()) : Chain(piece);
        double distance = inside / (2 * Math.PI);
        foreach (WorkedRow row in piece.Rows.Where(row => row.Kind == RowKind.Round))
        {
            RowTally tally = RowTally.Of(row, forms);
            if (tally.Stitches == 0) continue;
            distance += tally.Height;
            double flat = 2 * Math.PI * distance;
            if (IsLace(row) || (row.Into >= 0 && IsLace(piece.Rows[row.Into])))
            {
                yield return new RoundFlatness(row.Index, row.Label, tally.Places, flat, Shape3.NotKnown);
                continue;
            }
            double share = tally.Places / flat;
            yield return new RoundFlatness(row.Index, row.Label, tally.Places, flat, share < Least ? Shape3.Cupped : share > Most ? Shape3.Ruffled : Shape3.Flat);
        }
    }

    /// <summary>The published rules begin in rings of a few chains, which close up; larger rings stay open.</summary>
    private static double Open(long chains) => chains > ClosesUp ? chains : 0;

    /// <summary>An oval begins on both sides of its chain; a chain that all stand in one of has no length.</summary>
    private static double Chain(WorkedPiece piece)
    {
        int places = piece.Rows.First(row => row.Index > 0).Cells().SelectMany(cell => cell.Feet).Where(foot => foot.Row == 0).Select(foot => foot.Place).Distinct().Count();
        return places <= 1 ? 0 : 2 * (places - 1);
    }

    private static RoundFlatness[] InSpace(WorkedPiece piece, StitchForms forms, RoundFlatness[] rounds)
    {
        List<LaidRow> rows = Natural(piece, forms);
        var builder = new NetBuilder(rows);
        var space = new SpaceRelaxation(builder.Net, builder.Places, Bends(rows, builder));
        space.Run(Turns, Steps);
        return [.. rounds.Select(round => round with { Shape = round.Shape == Shape3.NotKnown ? Shape3.NotKnown : Judge(round, rows, builder, space) })];
    }

    /// <summary>The flat layout, but with the lengths that the yarn has.</summary>
    private static List<LaidRow> Natural(WorkedPiece piece, StitchForms forms)
    {
        var cells = new PieceCells(piece, forms, flat: false);
        return [.. new Layouts(piece, forms).AtRest().Select(row => row with { Taller = 1, Radius = Open(row.Row.Joined ? row.Row.Chains() : 0) / (2 * Math.PI), Cells = [.. row.Cells.Select((cell, i) => cell with { Width = cells.Widths[row.Index][i] })] })];
    }

    /// <summary>Three neighbours in a round, and a stitch with what it stands on and what that stands on, want to be in one line.</summary>
    private static IEnumerable<(int, int, int)> Bends(List<LaidRow> rows, NetBuilder builder)
    {
        foreach (LaidRow row in rows.Where(row => !row.IsCentre))
        {
            int[] nodes = [.. builder.NodeOf[row.Index].Where(node => node >= 0)];
            for (int i = 0; i < nodes.Length && nodes.Length > 3; i++) yield return (nodes[i], nodes[(i + 1) % nodes.Length], nodes[(i + 2) % nodes.Length]);
            for (int i = 0; i < row.Cells.Length; i++)
                if (Under(builder, row, i) is { } below && below.Row > 0 && Under(builder, rows[below.Row], (int)below.Place) is { } ground && Node(builder, row.Index, i) is { } top && Node(builder, below.Row, below.Place) is { } middle && Node(builder, ground.Row, ground.Place) is { } foot)
                    yield return (foot, middle, top);
        }
    }

    private static Foot? Under(NetBuilder builder, LaidRow row, int at) =>
        row.Cells[at].Cell.Feet is [{ } foot, ..] && foot.Row >= 0 && foot.Row < row.Index && foot.Place >= 0 && foot.Place < builder.NodeOf[foot.Row].Length ? foot : null;

    private static int? Node(NetBuilder builder, int row, long place) => builder.NodeOf[row][place] is >= 0 and var node ? node : null;

    private static Shape3 Judge(RoundFlatness round, List<LaidRow> rows, NetBuilder builder, SpaceRelaxation space)
    {
        int[] nodes = [.. builder.NodeOf[round.Row].Where(node => node >= 0)];
        if (nodes.Length < 3) return round.Shape;
        double wave = Length(nodes, space) / Math.Max(1e-6, Circle(nodes, space));
        double rise = Rise(rows[round.Row], builder, space);
        return (wave, rise) switch
        {
            ( > Wavy, _) when round.Stitches > MostInPlane * round.Flat => Shape3.Ruffled,
            (_, > Steep) when round.Stitches < Least * round.Flat => Shape3.Cupped,
            _ => Shape3.Flat,
        };
    }

    /// <summary>Length of a round as it lies in space.</summary>
    private static double Length(int[] nodes, SpaceRelaxation space)
    {
        double length = 0;
        for (int i = 0; i < nodes.Length; i++)
        {
            (int a, int b) = (nodes[i], nodes[(i + 1) % nodes.Length]);
            length += Math.Sqrt(Square(space.X[a] - space.X[b]) + Square(space.Y[a] - space.Y[b]) + Square(space.Z[a] - space.Z[b]));
        }
        return length;
    }

    /// <summary>Length of the line that the round is seen as from above.</summary>
    private static double Circle(int[] nodes, SpaceRelaxation space)
    {
        double length = 0;
        for (int i = 0; i < nodes.Length; i++)
        {
            (int a, int b) = (nodes[i], nodes[(i + 1) % nodes.Length]);
            length += Math.Sqrt(Square(space.X[a] - space.X[b]) + Square(space.Y[a] - space.Y[b]));
        }
        return length;
    }

    /// <summary>How steep the stitches of a round rise, on average.</summary>
    private static double Rise(LaidRow row, NetBuilder builder, SpaceRelaxation space)
    {
        double rise = 0;
        double length = 0;
        for (int i = 0; i < row.Cells.Length; i++)
        {
            if (Under(builder, row, i) is not { } foot || Node(builder, row.Index, i) is not { } top || Node(builder, foot.Row, foot.Place) is not { } under) continue;
            double up = space.Z[top] - space.Z[under];
            rise += up;
            length += Math.Sqrt(Square(up) + Square(space.X[top] - space.X[under]) + Square(space.Y[top] - space.Y[under]));
        }
        return length < 1e-6 ? 0 : Math.Abs(rise) / length;
    }

    private static double Square(double value) => value * value;
}
