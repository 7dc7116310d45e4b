using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Finds where feet stand in the rows laid out so far.</summary>
internal sealed class Standing(IReadOnlyList<LaidRow> rows)
{
    /// <summary>A stitch worked into a space has its foot under the chains.</summary>
    private const double UnderChain = 0.03;

    /// <summary>So many chains make a loop; its stitches keep this share of their way from its middle.</summary>
    private const int Loop = 3;
    private const double AlongLoop = 0.8;
    private const int Few = 4;

    /// <summary>A stitch worked into a chain stands on it.</summary>
    private const double OnChain = 0.1;

    /// <summary>Where a foot stands; null where its row is not laid out.</summary>
    /// <param name="foot">The foot.</param>
    /// <param name="top">Where its stitch's top is: stitches in a ring stand on the edge of the ring, each on its own side.</param>
    public Point? Of(Foot foot, Point top)
    {
        if (Host(foot) is not { } host) return null;
        LaidRow row = rows[foot.Row];
        if (row.IsCentre && (host.Cell.Kind == CellKind.Ring || foot.Kind == FootKind.Ring || !row.Row.Joined || AllInOne(foot)))
            return row.Centre + ((top - row.Centre).Unit() * row.Radius);
        bool chain = host.Cell.Kind == CellKind.Chains || (host.Cell.Kind == CellKind.FoundationChain && host.Stance == Stance.Lying && !row.IsCentre);
        Point at = chain ? On(new ChainPath(row, (int)foot.Place), foot, host.Cell, top) : host.Top;
        if (chain && host.Cell.Kind == CellKind.FoundationChain && Hangs(host, top)) return at + ((top - at).Unit() * OnChain);
        return foot.Kind switch
        {
            FootKind.FrontPost or FootKind.BackPost => at - (host.Up * (host.Form.Height / 2)),
            FootKind.Space => at - (host.Up * UnderChain),
            _ => chain ? at + ((top - at).Unit() * OnChain) : at,
        };
    }

    /// <summary>A round of which all stitches are worked into one chain of the ring closes over it and stands round the ring.</summary>
    private bool AllInOne(Foot foot)
    {
        if (foot.Kind != FootKind.Chain) return false;
        LaidRow? first = rows.FirstOrDefault(row => row.Index > foot.Row && row.Cells.Length > 0);
        return first is { Cells.Length: > Few } && first.Cells.All(cell => cell.Cell.Feet.All(other => other.Row != foot.Row || other.Place == foot.Place));
    }

    /// <summary>Stitches in a loop of chains stand side by side along it, each under its own top; in a short space they meet in its middle.</summary>
    private static Point On(ChainPath path, Foot foot, Cell host, Point top) =>
        path.At(foot.Kind == FootKind.Space && foot.Chain < 0 && host.Chains >= Loop && top != default ? 0.5 + ((path.Under(top) - 0.5) * AlongLoop) : ShareOf(foot, host));

    /// <summary>True for a stitch that hangs from the other side of a chain.</summary>
    private static bool Hangs(LaidCell host, Point top)
    {
        Point way = top - host.Top;
        return (way.X * host.Up.X) + (way.Y * host.Up.Y) < 0;
    }

    /// <summary>The cell that a foot stands on; null where its row is not laid out.</summary>
    public LaidCell? Host(Foot foot) =>
        foot.Row >= 0 && foot.Row < rows.Count && foot.Place >= 0 && foot.Place < rows[foot.Row].Cells.Length ? rows[foot.Row].Cells[foot.Place] : null;

    private static double ShareOf(Foot foot, Cell host) =>
        foot.Chain >= 0 && host.Chains > 1 ? (foot.Chain + 0.5) / host.Chains : 0.5;
}
