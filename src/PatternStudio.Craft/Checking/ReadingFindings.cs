using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Findings of the reading: words that could not be read, and what is wrong with the text before any stitch is worked.</summary>
internal static class ReadingFindings
{
    public static IEnumerable<Finding> Of(Pattern pattern)
    {
        var rows = new RowsOfText(pattern);
        IReadOnlyList<TextSpan> foreign = ForeignTerms.In(pattern);
        return pattern.Troubles.Select(trouble => Trouble(trouble, pattern, rows))
            .Concat(Stretches(pattern).Where(step => !foreign.Any(step.Span.Contains)).Select(step => Unread(step, pattern, rows)))
            .Concat(pattern.Pieces.SelectMany(piece => piece.Items).OfType<Passage>().Where(passage => !passage.IsRemark)
                .Select(passage => Finding.Of(FindingCodes.NotRead, passage.Span, ReadingSentences.UnreadLine(passage.Text))));
    }

    /// <summary>The unread words of rows; neighbours with nothing but marks between them are one stretch.</summary>
    private static IEnumerable<UnreadStep> Stretches(Pattern pattern)
    {
        UnreadStep? stretch = null;
        foreach (UnreadStep step in TreeSteps.OfRows(pattern).OfType<UnreadStep>().OrderBy(step => step.Span.Start))
        {
            if (stretch is not null && OnlyMarksBetween(pattern.Source, stretch.Span, step.Span)) stretch = stretch with { Span = stretch.Span.Through(step.Span), Nearest = stretch.Nearest ?? step.Nearest };
            else
            {
                if (stretch is not null) yield return stretch;
                stretch = step;
            }
        }
        if (stretch is not null) yield return stretch;
    }

    private static bool OnlyMarksBetween(SourceText source, TextSpan first, TextSpan second)
    {
        if (second.Start < first.End) return true;
        foreach (char between in source.Content.AsSpan(first.End, second.Start - first.End))
            if (between is not (' ' or '\t' or ',' or ';' or '.')) return false;
        return true;
    }

    private static Finding Unread(UnreadStep step, Pattern pattern, RowsOfText rows) =>
        Finding.Of(FindingCodes.NotRead, step.Span, ReadingSentences.Unread(pattern.Source.Slice(step.Span), rows.NameAt(step.Span.Start), step.Nearest));

    private static Finding Trouble(ReadingTrouble trouble, Pattern pattern, RowsOfText rows) =>
        Finding.Of(ReadingSentences.CodeOf(trouble.Kind), trouble.Span, ReadingSentences.Of(trouble, pattern.Source.Slice(trouble.Span), rows.NameAt(trouble.Span.Start), pattern.Sizes.Count));
}
