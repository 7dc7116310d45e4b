using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>A cell in its place on paper.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Form">How its stitch is built.</param>
/// <param name="Top">Where its top is; the middle of a run of chains.</param>
/// <param name="Up">The way from its foot to its top, as the row about it goes; one long.</param>
/// <param name="Width">Share of its row, in stitch widths.</param>
internal readonly record struct LaidCell(Cell Cell, StitchForm Form, Point Top, Point Up, double Width)
{
    /// <summary>How a chain of the foundation is drawn.</summary>
    public Stance Stance { get; init; }

    /// <summary>What it stands on, where no cell of another row tells: the edge of the fabric, at a place found by the layout.</summary>
    public Point? Ground { get; init; }
}

/// <summary>A row in its place on paper.</summary>
/// <param name="Row">The row as worked.</param>
/// <param name="Index">Its index in the piece.</param>
/// <param name="Cells">Its cells in the order worked; none for a row that was not checked.</param>
/// <param name="Label">Where its number stands.</param>
internal sealed record LaidRow(WorkedRow Row, int Index, LaidCell[] Cells, Point Label)
{
    /// <summary>True for the ring or the chain that rounds are worked into.</summary>
    public bool IsCentre { get; init; }

    /// <summary>How many times taller than its stitches the row is drawn.</summary>
    public double Taller { get; init; } = 1;

    /// <summary>How far the tops of a flat round are from where the rounds began.</summary>
    public double Out { get; init; }

    /// <summary>Middle and radius of the ring, for a centre.</summary>
    public Point Centre { get; init; }

    public double Radius { get; init; }

    /// <summary>True where the last cell lies beside the first.</summary>
    public bool Closed { get; init; }

    /// <summary>The nearest cell before (-1) or after (+1) that takes room in the row; null at an end.</summary>
    public LaidCell? Beside(int at, int step)
    {
        for (int hop = 1, i = at + step; hop < Cells.Length; hop++, i += step)
        {
            if ((i < 0 || i >= Cells.Length) && !Closed) return null;
            i = (i + Cells.Length) % Cells.Length;
            if (Cells[i].Width > 0) return Cells[i];
        }
        return null;
    }
}
