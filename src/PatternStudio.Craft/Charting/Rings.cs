using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>The centre of rounds: a chain ring, a magic ring, or the one chain that the first round is worked into.</summary>
internal static class Rings
{
    public const double MagicRadius = 0.5;

    /// <summary>A chain that a whole round stands in is drawn small.</summary>
    public const double ChainRadius = 0.28;

    /// <summary>True for a row that is the centre: it holds a ring, or is the foundation of rounds.</summary>
    public static bool IsCentre(WorkedRow row, Cell[] cells) =>
        row.Kind == RowKind.Foundation || (cells.Length > 0 && cells.All(cell => cell.Kind is CellKind.Ring or CellKind.FoundationChain or CellKind.Join));

    /// <summary>Radius of a ring of so many chains, each as long as a stitch is wide.</summary>
    public static double Radius(long chains) => Math.Max(MagicRadius, chains / (2 * Math.PI));

    /// <summary>The centre as a placed row, its chains evenly round it; its <see cref="PlacedRow.Low"/> below 0 marks it.</summary>
    public static PlacedRow Place(WorkedRow row, int index, Cell[] cells, StitchForms forms)
    {
        double radius = row.Joined ? Radius(row.Chains()) : cells.All(cell => cell.Kind == CellKind.Ring) ? MagicRadius : ChainRadius;
        double share = 1.0 / Math.Max(1, cells.Length);
        PlacedCell[] placed = [.. cells.Select((cell, i) => new PlacedCell(cell, forms.Of(cell.Stitch), PolygonGround.Bottom + ((i + 0.5) * share), radius, share))];
        return new PlacedRow(row, index, placed, 1, -1, radius);
    }
}
