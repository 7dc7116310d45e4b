using PatternStudio.Craft.Working;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What may be chosen about the chart of a pattern, seen from its fabric.</summary>
/// <param name="Pieces">The names of its pieces, or their numbers.</param>
/// <param name="HasColours">True where it is worked in more than one colour.</param>
public sealed record ChartFacts(IReadOnlyList<string> Pieces, bool HasColours)
{
    public static readonly ChartFacts None = new([], false);

    /// <summary>A pattern that has not changed colour by then does not: colours come early, and blankets are long.</summary>
    private const int MostRows = 400;

    public static ChartFacts Of(Fabric fabric) => new(
        [.. fabric.Pieces.Select((piece, i) => piece.Name.Length > 0 ? piece.Name : $"{i + 1}")],
        fabric.Pieces.SelectMany(piece => piece.Rows.Take(MostRows)).SelectMany(row => row.Runs).SelectMany(run => run.Unit)
            .Select(cell => cell.Colour).Where(colour => colour.Length > 0).Distinct().Take(2).Count() == 2);
}
