using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;

namespace PatternStudio.Studio.Designs.Comparing;

/// <summary>What became of a line.</summary>
public enum LineFate { Same, Changed, Removed, Added }

/// <summary>Some words of a line, and whether the other text has them.</summary>
public sealed record ComparedWords(string Words, bool Differs);

/// <summary>A line of two texts: as it was and as it is.</summary>
/// <param name="Before">Its words before; empty where it was added.</param>
/// <param name="After">Its words after; empty where it was removed.</param>
public sealed record ComparedLine(LineFate Fate, IReadOnlyList<ComparedWords> Before, IReadOnlyList<ComparedWords> After);

/// <summary>Compares two texts line by line, and within lines word by word.</summary>
public static class WordsComparison
{
    /// <summary>Every line of either text, in order.</summary>
    public static IReadOnlyList<ComparedLine> Between(string before, string after)
    {
        SideBySideDiffModel sides = SideBySideDiffBuilder.Diff(before.ReplaceLineEndings("\n"), after.ReplaceLineEndings("\n"), ignoreWhiteSpace: false, ignoreCase: false);
        return [.. sides.OldText.Lines.Zip(sides.NewText.Lines, Of)];
    }

    private static ComparedLine Of(DiffPiece before, DiffPiece after) => (before.Type, after.Type) switch
    {
        (ChangeType.Unchanged, _) => new(LineFate.Same, Whole(before), Whole(after)),
        (ChangeType.Imaginary, _) => new(LineFate.Added, [], Whole(after)),
        (_, ChangeType.Imaginary) => new(LineFate.Removed, Whole(before), []),
        _ => new(LineFate.Changed, Parts(before), Parts(after)),
    };

    private static ComparedWords[] Whole(DiffPiece line) => [new(line.Text ?? "", false)];

    /// <summary>Neighbours of a kind are drawn together.</summary>
    private static List<ComparedWords> Parts(DiffPiece line)
    {
        var parts = new List<ComparedWords>();
        foreach (DiffPiece piece in line.SubPieces.Where(piece => piece.Type != ChangeType.Imaginary && piece.Text is not null))
        {
            bool differs = piece.Type != ChangeType.Unchanged;
            if (parts is [.., { } last] && last.Differs == differs) parts[^1] = last with { Words = last.Words + piece.Text };
            else parts.Add(new(piece.Text, differs));
        }

        return parts;
    }
}
