using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'starting in 2nd ch from hook, sc in each ch across': the first place, then the rest, as 'in 2nd ch from hook and in each ch across' says it.</summary>
internal static class StartingAtSteps
{
    private static readonly Phrase Start = new("work? beg at|with|from?");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.Take(Start) && (Placements.Take(cursor) ?? Placements.TakeBare(cursor)) is { Choice: PlaceChoice.FromHook } first)
        {
            cursor.Take(TokenKind.Comma);
            var read = new StepList();
            if (StitchSteps.Read(cursor, read) && read.Steps is [StitchStep { Where: { Choice: PlaceChoice.Each or PlaceChoice.Next } rest } stitch])
            {
                steps.Add(stitch with { Where = first with { And = rest }, Span = cursor.SpanFrom(from) });
                return true;
            }
        }
        cursor.At = from;
        return false;
    }
}
