using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A piece or section that can be folded away under its heading.</summary>
/// <param name="First">1-based line of the heading.</param>
/// <param name="Last">Its last line that is not blank.</param>
public sealed record LineFold(int First, int Last)
{
    /// <summary>The headed pieces of a pattern.</summary>
    public static IReadOnlyList<LineFold> Of(Pattern pattern) =>
        [.. pattern.Pieces.Where(piece => piece.Name.Length > 0).Select(piece => Of(pattern, piece)).Where(fold => fold.Last > fold.First)];

    private static LineFold Of(Pattern pattern, Piece piece)
    {
        string text = pattern.Source.Content;
        int end = Math.Min(piece.Span.End, text.Length);
        while (end > piece.Span.Start && char.IsWhiteSpace(text[end - 1])) end--;
        return new(pattern.Source.Locate(piece.Span.Start).Line, pattern.Source.Locate(end).Line);
    }
}
