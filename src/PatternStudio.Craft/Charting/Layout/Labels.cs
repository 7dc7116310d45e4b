using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Puts a row's number where the row begins.</summary>
internal static class Labels
{
    private const double Room = 0.75;

    /// <summary>A chain beside its row may bow outward.</summary>
    private const double BesideBow = 0.7;

    /// <summary>Beside the row's first cell, half way up, on the side that the row comes from.</summary>
    public static LaidRow On(LaidRow row)
    {
        int first = Array.FindIndex(row.Cells, cell => cell.Cell.Kind is not (CellKind.Join or CellKind.Picot));
        if (first < 0) return row;
        LaidCell cell = row.Cells[first];
        Point way = row.Beside(first, 1) is { } next && (next.Top - cell.Top).Length > 1e-6 ? (next.Top - cell.Top).Unit() : cell.Up.Right();
        double height = Math.Max(0.9, cell.Form.Height);
        double room = cell is { Width: <= 0, Cell: { Kind: CellKind.TurningChain, Chains: > 1 } } ? Room + BesideBow : Room;
        return row with { Label = cell.Top - (way * ((Math.Max(0.6, cell.Width) / 2) + room)) - (cell.Up * (height / 2)) };
    }
}
