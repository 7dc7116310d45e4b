using System.Text;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing;

/// <summary>
/// Writes a tree as a modern pattern: one row a line, abbreviations of its terminology, the punctuation of today's publishers. Reading what it
/// writes gives the same tree. Words that were not read, remarks and places with no usual wording stay as they were written.
/// </summary>
public static class TreePrinter
{
    /// <summary>A whole pattern.</summary>
    public static string Print(Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var text = new StringBuilder();
        foreach (string line in FrontMatterWords.Lines(pattern)) text.Append(line).Append('\n');
        foreach (Piece piece in pattern.Pieces)
        {
            text.Append('\n');
            if (piece.Name.Length > 0) text.Append(PieceHeading(piece)).Append('\n');
            foreach (PieceItem item in piece.Items) text.Append(item is Passage ? "\n" : "").Append(Print(pattern, item)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>One row, or one entry between rows.</summary>
    /// <param name="pattern">The pattern it belongs to, for its stitch names and its own words.</param>
    public static string Print(Pattern pattern, PieceItem item) => new RowWords(new StitchWords(pattern)).Of(item);

    private static string PieceHeading(Piece piece) =>
        piece.Make is { } make ? $"{piece.Name} (make {NumberWords.Of(make)})" : piece.Name;
}
