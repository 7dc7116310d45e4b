using PatternStudio.Craft.Working;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What may be chosen about the chart of a pattern, seen from its fabric.</summary>
/// <param name="Pieces">The names of its pieces, or their numbers.</param>
/// <param name="Colours">The colours it is worked in as the pattern names them, in their order; an empty name is the yarn that the pattern does not name.</param>
public sealed record ChartFacts(IReadOnlyList<string> Pieces, IReadOnlyList<string> Colours)
{
    public static readonly ChartFacts None = new([], []);

    /// <summary>A pattern that has not changed colour by then does not: colours come early, and blankets are long.</summary>
    private const int MostRows = 400;

    /// <summary>Nobody works with more at once, and a list has an end.</summary>
    private const int MostColours = 40;

    /// <summary>True where it is worked in more than one colour.</summary>
    public bool HasColours => Colours.Count > 1;

    public static ChartFacts Of(Fabric fabric) => new(
        [.. fabric.Pieces.Select((piece, i) => piece.Name.Length > 0 ? piece.Name : $"{i + 1}")],
        [
            .. fabric.Pieces.SelectMany(piece => piece.Rows.Take(MostRows)).SelectMany(row => row.Runs).SelectMany(run => run.Unit)
                .Select(cell => cell.Colour).Where(colour => colour.Length <= ColourYarn.ColourLength).Distinct().Take(MostColours),
        ]);
}
