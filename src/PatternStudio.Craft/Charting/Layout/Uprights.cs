using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Sets every cell of a row upright on the line that the row makes, and what takes no room beside its neighbour.</summary>
internal static class Uprights
{
    /// <summary>A turning chain that does not count stands so far beside the first stitch.</summary>
    private const double Aside = 0.85;
    private const double ChainHeight = 0.6;

    public static LaidRow Of(LaidRow row)
    {
        LaidCell[] cells = [.. row.Cells];
        var laid = row with { Cells = cells };
        var ups = new Point[cells.Length];
        for (int i = 0; i < cells.Length; i++) ups[i] = Up(laid, i);
        for (int i = 0; i < cells.Length; i++) cells[i] = cells[i] with { Up = ups[i] };
        for (int i = 0; i < cells.Length; i++)
            if (cells[i].Width <= 0) cells[i] = Attached(laid, i);
        return laid;
    }

    /// <summary>A right angle to the line from the neighbour before to the neighbour after, on the side where the row grew.</summary>
    private static Point Up(LaidRow row, int at)
    {
        LaidCell cell = row.Cells[at];
        Point from = row.Beside(at, -1)?.Top ?? cell.Top;
        Point to = row.Beside(at, 1)?.Top ?? cell.Top;
        if ((to - from).Length < 1e-6) return cell.Up;
        Point up = (to - from).Unit().Right();
        return (up.X * cell.Up.X) + (up.Y * cell.Up.Y) < 0 ? up * -1 : up;
    }

    /// <summary>What takes no room, on or beside its neighbour.</summary>
    public static LaidCell Attached(LaidRow row, int at)
    {
        LaidCell cell = row.Cells[at];
        bool chain = cell.Cell.Kind == CellKind.TurningChain;
        LaidCell? beside = chain ? row.Beside(at, 1) ?? row.Beside(at, -1) : row.Beside(at, -1) ?? row.Beside(at, 1);
        if (beside is not { } host) return cell;
        if (cell.Cell.Kind == CellKind.FoundationChain) return cell with { Top = host.Top + (host.Up.Right() * Aside) + (host.Up * (ChainHeight * (at - Array.FindLastIndex(row.Cells, at, other => other.Width > 0) - 0.5))), Up = host.Up };
        if (!chain) return cell with { Top = host.Top, Up = host.Up };
        Point way = row.Cells.Length > at + 2 && row.Beside(at + 1, 1) is { } next ? (next.Top - host.Top).Unit() : host.Up.Right();
        return cell with { Top = host.Top - (way * Aside), Up = host.Up };
    }
}
