using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Charting;

/// <summary>Row numbers stand where their row begins, clear of symbols and of each other: one that would lie on something moves outward or aside, as little as it needs to.</summary>
internal sealed class RowNumbers
{
    /// <summary>Height of the figures, in stitch widths.</summary>
    public const double Size = 0.8;

    /// <summary>Above so many symbols numbers stay where they are: from afar nobody reads them, and near by there is room.</summary>
    private const int MostSymbols = 4000;

    private const double Margin = 0.06;

    /// <summary>A number that shares less than this with symbols is clear of them.</summary>
    private const double Clear = 0.02;

    /// <summary>What lying on something weighs beside one stitch width of moving.</summary>
    private const double Weight = 20;

    /// <summary>What turning a quarter aside weighs.</summary>
    private const double Aside = 0.8;

    private static readonly double[] Farther = [0, 0.3, 0.6, 0.9, 1.2, 1.6, 2, 2.5, 3];
    private static readonly double[] Turns = [0, 30, -30, 60, -60, 90, -90];

    private readonly Dictionary<(int X, int Y), List<SymbolOutline>> tiles = [];

    /// <summary>Where the number of each row stands.</summary>
    public static Point[] Of(IReadOnlyList<LaidRow> rows, IReadOnlyList<EquatableArray<Symbol>> symbols)
    {
        Point[] places = [.. rows.Select(row => row.Label)];
        if (symbols.Sum(row => row.Count) > MostSymbols) return places;
        var numbers = new RowNumbers();
        foreach (Symbol symbol in symbols.SelectMany(row => row)) numbers.Add(new SymbolOutline([.. symbol.Shapes]));
        for (int i = 0; i < rows.Count; i++)
            if (IsNumbered(rows[i]) && rows[i].Cells.Length > 0) numbers.Add(OutlineOf(places[i] = numbers.Place(rows[i]), rows[i]));
        return places;
    }

    /// <summary>The centre and foundations have no number.</summary>
    public static bool IsNumbered(LaidRow row) => row.Row.Kind != Reading.Tree.RowKind.Foundation && !row.IsCentre;

    private static SymbolOutline OutlineOf(Point at, LaidRow row)
    {
        Box box = new Words(at, row.Row.Number.ToString(), Size).Bounds.Grow(Margin);
        return new SymbolOutline([new Line(new Point(box.Left, box.Top), new Point(box.Right, box.Bottom)), new Line(new Point(box.Left, box.Bottom), new Point(box.Right, box.Top))]);
    }

    private Point Place(LaidRow row)
    {
        if (LiesOn(OutlineOf(row.Label, row)) <= Clear) return row.Label;
        LaidCell first = row.Cells[Math.Max(0, Array.FindIndex(row.Cells, cell => cell.Cell.Kind is not (Working.CellKind.Join or Working.CellKind.Picot)))];
        Point from = first.Top - (first.Up * (Math.Max(0.9, first.Form.Height) / 2)), way = row.Label - from;
        (Point best, double least) = (row.Label, double.MaxValue);
        foreach (double farther in Farther)
            foreach (double turn in Turns)
            {
                Point at = from + (Turned(way, turn).Unit() * (way.Length + farther));
                double cost = (Weight * LiesOn(OutlineOf(at, row))) + farther + (Aside * Math.Abs(turn) / 90);
                if (cost < least) (best, least) = (at, cost);
            }
        return best;
    }

    private static Point Turned(Point way, double degrees)
    {
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        return new Point((way.X * cos) - (way.Y * sin), (way.X * sin) + (way.Y * cos));
    }

    private double LiesOn(SymbolOutline number) => SymbolTiles.Of(number.Box).SelectMany(tile => tiles.GetValueOrDefault(tile) ?? []).Distinct().Sum(other => number.Overlap(other).Share);

    private void Add(SymbolOutline outline)
    {
        if (outline.Box is not { Width: < SymbolTiles.Largest, Height: < SymbolTiles.Largest }) return;
        foreach ((int, int) tile in SymbolTiles.Of(outline.Box))
            (tiles.TryGetValue(tile, out List<SymbolOutline>? there) ? there : tiles[tile] = []).Add(outline);
    }
}
