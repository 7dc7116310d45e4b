using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'Alternately 1 double, 7 chain, miss 3' and 'Repeat regularly 8 treble in the scallop, 1 double in the next': old books' word for a repeat, said before it.</summary>
internal static class AlternatelySteps
{
    private static readonly Phrase Alternately = new("work? alternately");
    private static readonly Phrase Regularly = new("rep regularly");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Steps.Any(step => step is not (RemarkStep or ColourStep)) || !cursor.Take(Alternately) && !cursor.Take(Regularly)) return false;
        cursor.Take(TokenKind.Comma);
        var told = new StepList();
        int after = cursor.At, count = 0;
        while (!cursor.AtEnd && cursor.Kind is not (TokenKind.Dot or TokenKind.Star) && StepReader.ReadNext(cursor, told))
        {
            if (told.Last is not (StitchStep or ChainStep or SkipStep or GroupStep or RemarkStep)) break;
            (after, count) = (cursor.At, told.Count);
            if (cursor.Kind == TokenKind.Dot) break;
        }
        if (count < 2) return false;
        cursor.At = after;
        TextSpan span = cursor.SpanFrom(from);
        steps.Add(new RepeatStep(told.ToArray().Take(count).ToEquatableArray(), new Extent(ExtentKind.Unstated, span), RepeatMark.Words, span));
        return true;
    }
}
