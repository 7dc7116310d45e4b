using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Turns a relaxed piece so that its foundation runs to the right, as charts are read.</summary>
internal static class Level
{
    public static List<LaidRow> Of(List<LaidRow> rows)
    {
        if (rows.Count == 0 || rows[0].IsCentre || rows[0].Row.Kind != RowKind.Foundation) return rows;
        LaidCell[] chain = [.. rows[0].Cells.Where(cell => cell.Width > 0)];
        if (chain.Length < 2) return rows;
        Point way = (chain[^1].Top - chain[0].Top).Unit();
        return Math.Abs(way.Y) < 1e-9 && way.X > 0 ? rows : [.. rows.Select(row => Turned(row, way))];
    }

    private static LaidRow Turned(LaidRow row, Point way) => row with
    {
        Label = Turned(row.Label, way),
        Centre = Turned(row.Centre, way),
        Cells = [.. row.Cells.Select(cell => cell with { Top = Turned(cell.Top, way), Up = Turned(cell.Up, way), Ground = cell.Ground is { } ground ? Turned(ground, way) : null })],
    };

    private static Point Turned(Point at, Point way) => new((at.X * way.X) + (at.Y * way.Y), (at.Y * way.X) - (at.X * way.Y));
}
