using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>
/// 'Sc in 2nd ch from hook': the chains skipped at the end of the foundation are the first row's turning chain, and a chart draws them standing.
/// </summary>
internal static class SkippedChains
{
    /// <summary>More skipped chains than the tallest stitch needs are no turning chain.</summary>
    private const int Most = 8;

    private const double Beside = 0.85;
    private const double ChainHeight = 0.6;

    /// <summary>Stands the skipped chains up, in place.</summary>
    /// <param name="foundation">The foundation as placed.</param>
    /// <param name="first">The first row, worked into it.</param>
    /// <returns>True where chains now stand where the first row's number would.</returns>
    public static bool StandUp(PlacedRow foundation, PlacedRow first)
    {
        if (foundation.Row.Kind != RowKind.Foundation || first.Cells.Length == 0) return false;
        long last = first.Cells.SelectMany(cell => cell.Cell.Feet).Where(foot => foot.Row == foundation.Index).Select(foot => foot.Place).DefaultIfEmpty(-1).Max();
        long skipped = foundation.Cells.Length - 1 - last;
        if (last < 0 || skipped is < 1 or > Most) return false;
        bool drawnByRow = first.Cells.Any(cell => cell.Cell.Kind == CellKind.TurningChain);
        double edge = Math.Max(foundation.Direction * foundation.Cells[last].U, foundation.Direction * first.Cells[0].U);
        double u = foundation.Direction * (edge + Beside);
        for (long i = last + 1; i < foundation.Cells.Length; i++)
            foundation.Cells[i] = foundation.Cells[i] with
            {
                U = u,
                T = foundation.Cells[last].T + (ChainHeight * (i - last - 0.5)),
                Stance = drawnByRow ? Stance.Hidden : Stance.Upright,
            };
        return !drawnByRow;
    }
}
