using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads a place given first: 'in next loop work 3 dc, ch 2, 3 dc', 'Over each loop, work 1 s c, 1 s d c, 3 d c'.</summary>
internal static class PlaceFirstSteps
{
    private static readonly Phrase WorkIn = new("work in the? ring|same|next|corner|center");
    private static readonly Phrase Work = new("work|make");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (cursor.Is(WorkIn)) cursor.At++;
        if (cursor.Context.InPlaceFirst || Placements.Take(cursor) is not { } where) return false;
        if (!cursor.Take(TokenKind.Comma)) cursor.Take(TokenKind.Colon);
        cursor.Take(Work);
        return cursor.Kind == TokenKind.Open ? ReadBracket(cursor, steps, where, from) : ReadList(cursor, steps, where, from);
    }

    private static bool ReadBracket(Cursor cursor, StepList steps, Placement where, int from)
    {
        int partner = cursor.Partner();
        if (partner < 0 || cursor.Depth >= ReadingLimits.Nesting) return false;
        EquatableArray<Step> members = StepReader.ReadAll(cursor.Inside(partner)).ToArray();
        cursor.At = partner + 1;
        steps.Add(new GroupStep(members, where, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>The list goes on while its stitches name no place; chains at its end belong to what follows.</summary>
    private static bool ReadList(Cursor cursor, StepList steps, Placement where, int from)
    {
        var list = new StepList();
        int begin = cursor.At, after = -1;
        EquatableArray<Step> members = [];
        while (!cursor.AtEnd && (!cursor.NextOpens() || OpensDefinition(cursor)) && cursor.Kind is not (TokenKind.Star or TokenKind.Semicolon or TokenKind.Dot))
        {
            int before = list.Count;
            cursor.Context.InPlaceFirst = true;
            bool another = StepReader.ReadNext(cursor, list);
            cursor.Context.InPlaceFirst = false;
            if (!another) break;
            if (list.Count != before + 1 || !IsMember(list.Last!)) break;
            // Kept now: 'repeat from beginning' behind the list would take its stitches in.
            if (list.Last is StitchStep) (after, members) = (cursor.At, list.ToArray());
        }
        if (after < 0 && IsMagic(cursor, where))
        {
            // 'In a magic ring, ch 3, 11 dc in ring': the ring is made, the stitches name their place themselves.
            cursor.At = begin;
            steps.Add(new MagicRingStep(where.Span));
            return true;
        }
        if (after < 0) return false;
        cursor.At = after;
        if (where.Choice == PlaceChoice.InRing) AddInRing(cursor, steps, where, members);
        else steps.Add(new GroupStep(members, where, cursor.SpanFrom(from)));
        return true;
    }

    /// <summary>'In a magic ring, ch 2, work 10 hdc': the ring, its chain, and stitches into it, not a group in one place.</summary>
    private static void AddInRing(Cursor cursor, StepList steps, Placement ring, EquatableArray<Step> members)
    {
        if (IsMagic(cursor, ring)) steps.Add(new MagicRingStep(ring.Span));
        foreach (Step step in members)
            steps.Add(step is StitchStep stitch ? stitch with { PerPlace = stitch.Count ?? stitch.PerPlace, Count = null, Where = ring } : step);
    }

    private static bool IsMagic(Cursor cursor, Placement where) =>
        where.Choice == PlaceChoice.InRing && cursor.Context.Source.Slice(where.Span) is var words && (words.Contains("magic", StringComparison.OrdinalIgnoreCase) || words.EndsWith("MR", StringComparison.OrdinalIgnoreCase) || words.EndsWith("MC", StringComparison.OrdinalIgnoreCase));

    /// <summary>'1 s d c (s d c: thread over, …), 8 d c': a bracket that defines the stitch before it.</summary>
    private static bool OpensDefinition(Cursor cursor)
    {
        int from = cursor.At;
        cursor.SkipSeparators();
        int open = cursor.At, partner = cursor.Partner();
        cursor.At = from;
        return partner > open && Enumerable.Range(open, Math.Min(8, partner - open)).Any(i => cursor.Context.Tokens[i].Kind == TokenKind.Colon);
    }

    /// <summary>A picot closed on the way and the words that define a stitch belong to the list as well.</summary>
    private static bool IsMember(Step step) => step is StitchStep { Where: null } or ChainStep or StitchStep { Completes.Value: "picot" } || step is RemarkStep remark && remark.Text.StartsWith('(') && remark.Text.Contains(':');
}
