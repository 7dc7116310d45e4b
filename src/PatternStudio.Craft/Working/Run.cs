using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>
/// A stretch of a row in which the same cells come again and again: 'sc, ch 1' two hundred times. Rows are kept as runs, so
/// that a blanket's row costs what its instruction costs.
/// </summary>
/// <param name="Unit">The cells of one turn; feet are those of the first turn.</param>
/// <param name="Times">How many turns; at least 1.</param>
/// <param name="Stride">How far the feet move in the row below from one turn to the next, in cells; negative where the work was turned.</param>
public sealed record Run(EquatableArray<Cell> Unit, long Times, int Stride)
{
    /// <summary>Number of cells in all turns.</summary>
    public long Length => Unit.Count * Times;

    /// <summary>The cell at a 0-based index in the run, its feet moved to its own turn.</summary>
    public Cell At(long index)
    {
        Cell cell = Unit[(int)(index % Unit.Count)];
        long shift = index / Unit.Count * Stride;
        return shift == 0 || cell.Feet.IsEmpty
            ? cell
            : cell with { Feet = cell.Feet.Select(foot => foot with { Place = foot.Place + shift }).ToEquatableArray() };
    }
}
