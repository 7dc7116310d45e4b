using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads a place behind a comma, for the list before it: '2 dc, ch 1, 3 dc, into the loop.', '3 dc, ch 2, 3 dc, all in next ch-2 sp;'.</summary>
internal static class PlaceLastSteps
{
    private static readonly Phrase All = new("all|both");

    private static readonly Phrase LastOne = new("and? work|make|with? the? last one");

    /// <summary>'1 sc in every st, the last one in 3rd ch of turning ch': one more of the same stitch.</summary>
    private static bool ReadLastOne(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Last is not StitchStep { Where.Choice: PlaceChoice.Each } each || !cursor.Take(LastOne) || Placements.Take(cursor) is not { } where) return false;
        steps.Add(new StitchStep(each.Stitch, SizedNumber.Of(1, new Text.TextSpan(where.Span.Start, 0)), null, where, cursor.SpanFrom(from)));
        return true;
    }

    public static bool Read(Cursor cursor, StepList steps)
    {
        if (ReadLastOne(cursor, steps)) return true;
        if (steps.Last is not StitchStep { Where: null } last || cursor.Ahead(-1).Kind != TokenKind.Comma) return false;
        cursor.Take(All);
        if (Placements.Take(cursor) is not { } where || !(cursor.AtEnd || cursor.Kind is TokenKind.Dot or TokenKind.Semicolon or TokenKind.Open)) return false;
        steps.ReplaceLast(last with { Where = where, PerPlace = last.Count ?? last.PerPlace, Count = null, Span = Text.TextSpan.FromTo(last.Span.Start, where.Span.End) });
        SharedPlaces.Group(cursor.Context, steps);
        return true;
    }
}
