using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Where a cell of a new row begins to grow, and which way.</summary>
/// <param name="Base">What it stands on.</param>
/// <param name="Up">The way it grows; one long.</param>
/// <param name="Top">Where it would end, its neighbours left aside.</param>
/// <param name="Stands">True for a cell with feet; chains hang between their neighbours.</param>
internal readonly record struct Sprout(Point Base, Point Up, Point Top, bool Stands)
{
    /// <summary>True for a place on the edge of the fabric that no cell of its feet tells.</summary>
    public bool OnEdge { get; init; }
}

/// <summary>Finds where the cells of a new row grow from: upward from the tops below, downward from the other side of a chain, outward along the edge of rows, round a centre, fanned at corners.</summary>
internal sealed class Sprouts(IReadOnlyList<LaidRow> rows, StitchForms forms, double[] widths, bool closed, double taller)
{
    /// <summary>So many stitch widths nearer is clearly nearer.</summary>
    private const double Clear = 2;
    private const double HalfStitch = 0.5;
    private const double BesideChains = 1.15;

    private readonly Standing standing = new(rows);

    public Sprout[] Of(Cell[] cells)
    {
        Point?[] bases = [.. cells.Select(Base)];
        Point?[] ups = [.. cells.Select(Up)];
        TurnOtherSide(cells, ups);
        AroundCentre(cells, bases, ups);
        var onEdge = new bool[cells.Length];
        if (Array.Exists(cells, InRowEnd)) Perimeter(cells, bases, ups, onEdge);
        AlongRowEnds(cells, bases, ups, onEdge);
        FanOut(cells, bases, ups);
        return Between(cells, bases, ups, onEdge);
    }

    private Point? Base(Cell cell)
    {
        if (cell.Kind is CellKind.Chains or CellKind.Picot) return null;
        Point[] known = [.. cell.Feet.Where(foot => foot.Kind != FootKind.RowEnd).Select(foot => standing.Of(foot, default)).OfType<Point>()];
        return known.Length == 0 ? null : known.Aggregate((sum, at) => sum + at) * (1.0 / known.Length);
    }

    private Point? Up(Cell cell)
    {
        if (cell.Kind is CellKind.Chains or CellKind.Picot) return null;
        Point[] ups = [.. cell.Feet.Where(foot => foot.Kind != FootKind.RowEnd).Select(standing.Host).OfType<LaidCell>().Select(host => host.Up)];
        return ups.Length == 0 ? null : ups.Aggregate((sum, at) => sum + at).Unit();
    }

    private bool InCentre(Cell cell) => cell.Feet.Count > 0 && cell.Feet[0].Row is >= 0 and var below && below < rows.Count && rows[below].IsCentre;

    /// <summary>Chains of the foundation that were worked into before, or that the row comes back along, are worked from below.</summary>
    private void TurnOtherSide(Cell[] cells, Point?[] ups)
    {
        if (rows.Count == 0 || rows[0].IsCentre || rows[0].Row.Kind != Reading.Tree.RowKind.Foundation) return;
        bool worked = rows.Skip(1).Any(other => other.Row.Into == 0 && other.Cells.Length > 0);
        long? before = null;
        int way = 0;
        bool back = worked;
        for (int i = 0; i < cells.Length; i++)
        {
            Foot? foot = cells[i].Feet.Where(foot => foot.Row == 0 && foot.Kind != FootKind.RowEnd).Select(foot => (Foot?)foot).FirstOrDefault();
            if (foot is not { } at) continue;
            if (before is { } last && at.Place != last)
            {
                int step = Math.Sign(at.Place - last);
                if (way != 0 && step != way) back = true;
                if (way == 0) way = step;
            }
            before = at.Place;
            if (back && ups[i] is { } up) ups[i] = up * -1;
        }
    }

    /// <summary>A first round stands round its centre, in steps as wide as its cells.</summary>
    private void AroundCentre(Cell[] cells, Point?[] bases, Point?[] ups)
    {
        if (!Array.Exists(cells, InCentre)) return;
        LaidRow centre = rows[cells.First(InCentre).Feet[0].Row];
        double whole = closed ? 2 * Math.PI : Math.PI;
        double total = Math.Max(1, widths.Sum());
        double at = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            double width = widths[i];
            double share = (at + (width / 2)) / total;
            at += width;
            if (cells[i].Kind == CellKind.Picot) continue;
            double angle = closed ? (2 * Math.PI * PolygonGround.Bottom) + (whole * share) : whole * share;
            ups[i] = new Point(Math.Cos(angle), -Math.Sin(angle));
            if (InCentre(cells[i])) bases[i] = centre.Centre + (ups[i]!.Value * centre.Radius);
        }
    }

    /// <summary>
    /// A border goes round the fabric one way. Where the text does not say from which corner it takes a row, the row is taken from the corner where the border has come to.
    /// </summary>
    private static void Perimeter(Cell[] cells, Point?[] bases, Point?[] ups, bool[] onEdge)
    {
        Point? before = null;
        for (int first = 0, next; first < cells.Length; first = next)
        {
            next = first + 1;
            if (bases[first] is not { } start || cells[first].Feet.IsEmpty) continue;
            int last = first;
            for (; next < cells.Length && (bases[next] is null ? !InRowEnd(cells[next]) : cells[next].Feet[0].Row == cells[first].Feet[0].Row); next++)
                if (bases[next] is not null) last = next;
            next = last + 1;
            Point end = bases[last]!.Value;
            if (before is { } from && (end - from).Length + Clear < (start - from).Length)
            {
                Array.Reverse(bases, first, next - first);
                Array.Reverse(ups, first, next - first);
                for (int i = first; i < next; i++) onEdge[i] = bases[i] is not null;
            }
            before = bases[last];
        }
    }

    /// <summary>Stitches in the ends of rows stand along the edge, from the place before them to the place after.</summary>
    private void AlongRowEnds(Cell[] cells, Point?[] bases, Point?[] ups, bool[] onEdge)
    {
        for (int first = 0, next; first < cells.Length; first = next)
        {
            next = first + 1;
            if (!InRowEnd(cells[first])) continue;
            while (next < cells.Length && InRowEnd(cells[next])) next++;
            Point? from = bases.Take(first).LastOrDefault(at => at is not null);
            Point? to = bases.Skip(next).FirstOrDefault(at => at is not null) ?? bases.FirstOrDefault(at => at is not null);
            if (from is not { } start || to is not { } end) continue;
            if (AnotherFollows(cells, bases, next)) end = CornerBetween(start, end, bases.Take(first)) ?? end;
            Point side = (end - start).Unit().Right();
            Point away = start.Toward(end, 0.5) - Middle();
            Point outward = (side.X * away.X) + (side.Y * away.Y) < 0 ? side * -1 : side;
            for (int i = first; i < next; i++)
            {
                bases[i] = start.Toward(end, (i - first + 1.0) / (next - first + 1)) + (outward * Edge());
                ups[i] = outward;
                onEdge[i] = true;
            }
        }
    }

    /// <summary>True where another edge comes after this one before any place that is known.</summary>
    private static bool AnotherFollows(Cell[] cells, Point?[] bases, int next)
    {
        while (next < cells.Length && bases[next] is null && !InRowEnd(cells[next])) next++;
        return next < cells.Length && InRowEnd(cells[next]);
    }

    /// <summary>The corner of the fabric that lies on the way from one place to another and was not passed yet.</summary>
    private Point? CornerBetween(Point from, Point to, IEnumerable<Point?> passed)
    {
        Point[] known = [from, to, .. passed.OfType<Point>()];
        LaidRow[] worked = [.. rows.Where(row => row.Row.Kind != Reading.Tree.RowKind.Round && row.Cells.Length > 1)];
        if (worked.Length == 0) return null;
        Point[] corners = [worked[0].Cells[0].Top, worked[0].Cells[^1].Top, worked[^1].Cells[0].Top, worked[^1].Cells[^1].Top];
        Point[] open = [.. corners.Where(corner => known.All(at => (at - corner).Length > Clear))];
        return open.Length == 0 ? null : open.MinBy(corner => (corner - from).Length);
    }

    /// <summary>Half a stitch beyond the middle of the last one, and beyond the turning chains that stand there.</summary>
    private double Edge() => rows.Any(row => row.Cells.Any(cell => cell.Cell is { Kind: CellKind.TurningChain, Counts: false, Chains: > 0 })) ? BesideChains : HalfStitch;

    private Point Middle()
    {
        Box box = rows.SelectMany(row => row.Cells).Aggregate(Box.Empty, (all, cell) => all.With(cell.Top));
        return new Point((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
    }

    private static bool InRowEnd(Cell cell) => cell.Feet.Any(foot => foot.Kind == FootKind.RowEnd);

    private static double Turn(Point from, Point to) => (from.X * to.Y) - (from.Y * to.X);

    /// <summary>Stitches in one place fan from the way of the stitch before them to the way of the one after.</summary>
    private void FanOut(Cell[] cells, Point?[] bases, Point?[] ups)
    {
        for (int first = 0, next; first < cells.Length; first = next)
        {
            next = first + 1;
            if (bases[first] is not { } at || InRowEnd(cells[first])) continue;
            int last = first;
            while (next < cells.Length && (bases[next] is null || Near(bases[next]!.Value, at))) { if (bases[next] is not null) last = next; next++; }
            next = last + 1;
            if (last == first) continue;
            Point? before = ups.Take(first).LastOrDefault(up => up is not null) ?? (closed ? ups.Skip(next).LastOrDefault(up => up is not null) : null) ?? ups[first];
            Point? after = ups.Skip(next).FirstOrDefault(up => up is not null) ?? (closed ? ups.Take(first).FirstOrDefault(up => up is not null) : null) ?? ups[last];
            if (before is not { } from || after is not { } to || ups[first] is null) continue;
            double bend = Math.Atan2(Turn(from, to), (from.X * to.X) + (from.Y * to.Y));
            if (Math.Abs(bend) > 2.9) bend = Math.Abs(bend) * Outward(bases, first, next, from);
            for (int i = first; i <= last; i++)
                if (ups[i] is not null) ups[i] = Rotated(from, bend * (i - first + 1) / (last - first + 2));
        }
    }

    /// <summary>A row that turns about the end of a chain turns towards the way it was going.</summary>
    private static int Outward(Point?[] bases, int first, int next, Point up)
    {
        Point? before = bases.Take(first).LastOrDefault(at => at is not null);
        Point? after = bases.Skip(next).FirstOrDefault(at => at is not null);
        Point way = before is { } last && bases[first] is { } here ? here - last : after is { } coming && bases[first] is { } from ? from - coming : up.Right();
        return Turn(up, way) < 0 ? -1 : 1;
    }

    private static bool Near(Point one, Point other) => (one - other).Length < 0.3;

    private static Point Rotated(Point way, double angle) =>
        new((way.X * Math.Cos(angle)) - (way.Y * Math.Sin(angle)), (way.X * Math.Sin(angle)) + (way.Y * Math.Cos(angle)));

    /// <summary>Cells without feet hang between their neighbours.</summary>
    private Sprout[] Between(Cell[] cells, Point?[] bases, Point?[] ups, bool[] onEdge)
    {
        var sprouts = new Sprout[cells.Length];
        int[] known = [.. Enumerable.Range(0, cells.Length).Where(i => bases[i] is not null && ups[i] is not null && cells[i].Kind != CellKind.Join)];
        foreach (int i in known) sprouts[i] = new Sprout(bases[i]!.Value, ups[i]!.Value, bases[i]!.Value + (ups[i]!.Value * Height(cells[i])), widths[i] > 0) { OnEdge = onEdge[i] };
        if (known.Length == 0) return [.. cells.Select((_, i) => Line(i))];
        for (int i = 0; i < cells.Length; i++)
        {
            int after = Array.FindIndex(known, at => at >= i);
            if (after >= 0 && known[after] == i) continue;
            int right = after >= 0 ? known[after] : closed ? known[0] : known[^1];
            int left = after > 0 ? known[after - 1] : after < 0 || closed ? known[^1] : known[0];
            Point up = (sprouts[left].Up + sprouts[right].Up).Unit();
            double share = left == right || after <= 0 ? 0.5 : (double)(i - left) / (right - left);
            sprouts[i] = new Sprout(sprouts[left].Base.Toward(sprouts[right].Base, share), up, sprouts[left].Top.Toward(sprouts[right].Top, share), false);
        }
        return sprouts;
    }

    private static Sprout Line(int at) => new(new Point(at, 0), new Point(0, -1), new Point(at, -1), true);

    private double Height(Cell cell)
    {
        StitchForm form = forms.Of(cell.Stitch);
        return taller * (form.Kind == FormKind.Unknown || cell is { Kind: CellKind.TurningChain, Counts: false } ? 1 : Math.Max(0.5, form.Height));
    }
}
