using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>What the chains passed over before a first stitch count as, told behind it: in brackets, or as words of their own ('dc in 6th ch from hook, skipped chs count as dc and ch 1').</summary>
internal static class SkippedChainsWords
{
    private static readonly Phrase Subject = new("the|these? first? #? skip|unworked # ch");
    private static readonly Phrase Unnumbered = new("the|these? first? #? skip|unworked ch");

    /// <summary>Words without brackets, behind the stitch that skips the chains.</summary>
    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        return (cursor.Is(Subject) || cursor.Is(Unnumbered)) && CountsAsWords.Take(cursor) is { } said && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) || cursor.Kind is TokenKind.Star or TokenKind.Open) && Told(cursor, steps, said, from);
    }

    /// <summary>Gives what is said to the stitch or group before; false where that skips no chains.</summary>
    public static bool Told(Cursor cursor, StepList steps, CountsAsWords said, int from)
    {
        var skipped = new SkippedChains(said.Role, said.Stitch, said.ThenChains, cursor.SpanFrom(from)) { ThenSkips = said.ThenSkips };
        Step? told = steps.Last switch
        {
            GroupStep { Where.Choice: PlaceChoice.FromHook } group => group with { Skipped = skipped, Span = group.Span.Through(skipped.Span) },
            StitchStep { Where.Choice: PlaceChoice.FromHook } stitch => stitch with { Skipped = skipped, Span = stitch.Span.Through(skipped.Span) },
            _ => null,
        };
        if (told is null) return false;
        steps.ReplaceLast(told);
        return true;
    }
}
