using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>
/// Where the text instructs: rows and definitions, without the remarks in them. There 'double', 'long' or 'plain' are stitches; in
/// prose they are plain English.
/// </summary>
internal sealed class InstructionSpans
{
    private readonly List<TextSpan> instructions;
    private readonly List<TextSpan> remarks;

    private InstructionSpans(IEnumerable<TextSpan> instructions, IEnumerable<TextSpan> remarks)
    {
        this.instructions = [.. instructions.OrderBy(span => span.Start)];
        this.remarks = [.. remarks.OrderBy(span => span.Start)];
    }

    public static InstructionSpans Of(Pattern pattern)
    {
        List<PieceItem> items = [.. pattern.Pieces.SelectMany(piece => piece.Items)];
        IEnumerable<TextSpan> rows = items.Where(item => item is not Passage).Select(item => item.Span);
        IEnumerable<TextSpan> remarks = items.OfType<RowInstruction>().SelectMany(row => row.Steps).SelectMany(Steps.Within)
            .Where(step => step is RemarkStep or UnreadStep or UncountedStep or MarkerStep or FastenOffStep or ColourStep).Select(step => step.Span);
        return new InstructionSpans(rows.Concat(pattern.Definitions.Select(definition => definition.Body)), remarks);
    }

    /// <summary>True where the words under a span instruct.</summary>
    public bool Hold(TextSpan words) => Covers(instructions, words) && !Covers(remarks, words);

    /// <summary>Spans of a kind do not overlap: the last one that begins before the words is the only one that can hold them.</summary>
    private static bool Covers(List<TextSpan> spans, TextSpan words)
    {
        int low = 0, high = spans.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (spans[middle].Start <= words.Start) low = middle + 1;
            else high = middle;
        }

        return low > 0 && spans[low - 1].Contains(words);
    }
}

/// <summary>Walks steps.</summary>
internal static class Steps
{
    /// <summary>A step and all steps inside it.</summary>
    public static IEnumerable<Step> Within(Step step) => step switch
    {
        GroupStep group => group.Steps.SelectMany(Within).Prepend(step),
        RepeatStep repeat => repeat.Steps.Concat(repeat.Ending).SelectMany(Within).Prepend(step),
        _ => [step],
    };
}
