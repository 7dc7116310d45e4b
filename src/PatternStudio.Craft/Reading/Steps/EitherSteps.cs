using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads a choice: 'dc in next 2 dc or 2 dc in next ch-2 sp', 'sk next 2 sts or next ch-2 sp'.</summary>
internal static class EitherSteps
{
    private static readonly Phrase Or = new("or|else");
    private static readonly Phrase Next = new("the? next");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Last is not { } first || first is EitherStep || !cursor.Take(Or)) return false;
        Step? other = first is SkipStep ? TakeSkip(cursor) : null;
        if (other is null)
        {
            var list = new StepList();
            if (cursor.NextOpens() || !StepReader.ReadNext(cursor, list) || list.Count != 1 || list.Last is UnreadStep or RemarkStep) return false;
            other = list.Last!;
        }
        steps.ReplaceLast(new EitherStep(first, other, first.Span.Through(cursor.SpanFrom(from))));
        return true;
    }

    private static SkipStep? TakeSkip(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(Next);
        SizedNumber? count = Numbers.Take(cursor);
        if (PlaceNouns.Take(cursor) is { } kind) return new SkipStep(count ?? SizedNumber.Of(1, new Text.TextSpan(cursor.SpanFrom(from).End, 0)), kind, cursor.SpanFrom(from));
        cursor.At = from;
        return null;
    }
}
