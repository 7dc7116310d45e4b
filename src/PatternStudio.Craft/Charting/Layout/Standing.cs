using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Finds where feet stand in the rows laid out so far.</summary>
internal sealed class Standing(IReadOnlyList<LaidRow> rows)
{
    /// <summary>A stitch worked into a space has its foot under the chains.</summary>
    private const double UnderChain = 0.03;

    /// <summary>A stitch worked into a chain stands on it.</summary>
    private const double OnChain = 0.1;

    /// <summary>Where a foot stands; null where its row is not laid out.</summary>
    /// <param name="foot">The foot.</param>
    /// <param name="top">Where its stitch's top is: stitches in a ring stand on the edge of the ring, each on its own side.</param>
    public Point? Of(Foot foot, Point top)
    {
        if (Host(foot) is not { } host) return null;
        LaidRow row = rows[foot.Row];
        if (row.IsCentre && (host.Cell.Kind == CellKind.Ring || foot.Kind == FootKind.Ring || !row.Row.Joined))
            return row.Centre + ((top - row.Centre).Unit() * row.Radius);
        bool chain = host.Cell.Kind == CellKind.Chains || (host.Cell.Kind == CellKind.FoundationChain && host.Stance == Stance.Lying && !row.IsCentre);
        Point at = chain ? new ChainPath(row, (int)foot.Place).At(ShareOf(foot, host.Cell)) : host.Top;
        if (chain && host.Cell.Kind == CellKind.FoundationChain && Hangs(host, top)) return at + ((top - at).Unit() * OnChain);
        return foot.Kind switch
        {
            FootKind.FrontPost or FootKind.BackPost => at - (host.Up * (host.Form.Height / 2)),
            FootKind.Space => at - (host.Up * UnderChain),
            _ => chain ? at + ((top - at).Unit() * OnChain) : at,
        };
    }

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
