using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>A cell with its place: where its top is, and how much of the row it takes.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Form">How its stitch is built.</param>
/// <param name="U">Along the row.</param>
/// <param name="T">Across the rows: the height of its top.</param>
/// <param name="Width">Share of the row, in units of u.</param>
internal readonly record struct PlacedCell(Cell Cell, StitchForm Form, double U, double T, double Width)
{
    public Stance Stance { get; init; }
}

/// <summary>How a chain of the foundation is drawn.</summary>
internal enum Stance
{
    /// <summary>In the line of the foundation.</summary>
    Lying,

    /// <summary>Skipped at the start of the first row: it stands up beside it as its turning chain.</summary>
    Upright,

    /// <summary>Drawn by the first row, whose turning chain it is part of.</summary>
    Hidden,
}

/// <summary>A row with all its cells placed.</summary>
/// <param name="Row">The row as worked.</param>
/// <param name="Index">Its index in the piece.</param>
/// <param name="Cells">Its cells; empty for a row that was not checked.</param>
/// <param name="Direction">+1 where u grows as the row is worked, else -1.</param>
/// <param name="Low">Height of what it stands on.</param>
/// <param name="High">Its own greatest height.</param>
internal sealed record PlacedRow(WorkedRow Row, int Index, PlacedCell[] Cells, int Direction, double Low, double High)
{
    /// <summary>Mean height of the tops; the row's own height where it has no cells.</summary>
    public double MeanTop => Cells.Length == 0 ? High : Cells.Average(cell => cell.T);

    /// <summary>Where the row number stands.</summary>
    public double LabelAt { get; init; }
}
