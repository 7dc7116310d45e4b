using PatternStudio.Craft.Charting;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Publishing.Scenes;

/// <summary>What a scene says of itself in words, and how many numbers follow.</summary>
internal sealed record SceneHead(
    string Title,
    string Description,
    double[] Box,
    bool Overview,
    IReadOnlyList<SceneRow> Rows,
    IReadOnlyList<string> Names,
    IReadOnlyList<string> Texts,
    IReadOnlyList<string> Inks,
    int Stitches,
    int Forms,
    int FormStrokes,
    int MarkStrokes);

/// <summary>A row of a scene.</summary>
/// <param name="Piece">Index of its piece.</param>
/// <param name="Row">Index in its piece.</param>
/// <param name="Label">'Row 3'.</param>
/// <param name="Says">'Row 3: 21 stitches'.</param>
/// <param name="Tone">'first', 'second', 'foundation' or 'gap'.</param>
internal sealed record SceneRow(int Piece, int Row, string Label, string Says, string Tone)
{
    /// <summary>Its stitches: the first, and how many.</summary>
    public int First { get; init; }

    public int Count { get; init; }

    /// <summary>Its marks among all marks.</summary>
    public int MarksFrom { get; init; }

    public int MarksTo { get; init; }

    /// <summary>The words that call for it, and those that tell how to work it (of another row, where it repeats that one).</summary>
    public int CalledFrom { get; init; }

    public int CalledTo { get; init; }

    public int From { get; init; }

    public int To { get; init; }

    public static SceneRow Of(DrawnRow row, WorkedRow? worked)
    {
        string says = worked is { Status: RowStatus.Checked } and not { Kind: RowKind.Foundation } && row.Tone != RowTone.Gap && !row.Label.Contains(':', StringComparison.Ordinal)
            ? $"{row.Label}: {worked.Total} {(worked.Total == 1 ? "stitch" : "stitches")}" : row.Label;
        return new SceneRow(row.Piece, row.Row, row.Label, says, SvgStyle.NameOf(row.Tone))
        {
            CalledFrom = worked?.CalledBy.Start ?? 0,
            CalledTo = worked?.CalledBy.End ?? 0,
            From = worked?.Instruction.Span.Start ?? 0,
            To = worked?.Instruction.Span.End ?? 0,
        };
    }
}
