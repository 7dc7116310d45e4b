using PatternStudio.Craft.Reading.Counts;
using PatternStudio.Craft.Reading.Definitions;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads brackets that say something about the steps before them: '(counts as dc)', '(shell made)', '(sc2tog: insert hook …)', '(RS facing)'.</summary>
internal static class BracketRemarks
{
    private static readonly Phrase CountsAs = new("count as");
    private static readonly Phrase NameTail = new("make|completed|complete|formed");

    /// <summary>'(counts as dc)' after a chain, '(skipped chs count as dc)' after a first stitch.</summary>
    public static bool ReadStandsFor(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        if (CountsAsWords.Whole(cursor.Inside(partner)) is not { } said) return ReadCountsAsGroup(cursor, steps, partner);
        cursor.At = partner + 1;
        if (SkippedChainsWords.Told(cursor, steps, said, from)) return true;
        switch (steps.Last)
        {
            case ChainStep chain:
                steps.ReplaceLast(said.Of(chain) with { Span = chain.Span.Through(cursor.SpanFrom(from)) });
                break;
            case JoinStep join when said is { Role: ChainRole.Counts, Stitch: null, ThenChains: > 0 }:
                steps.ReplaceLast(join with { CountsAsSpace = said.ThenChains, Span = join.Span.Through(cursor.SpanFrom(from)) });
                break;
            default:
                AddRemark(cursor, steps, from);
                break;
        }
        return true;
    }

    /// <summary>'Ch 3, dc in same sp (counts as 2-dc group)', '… (counts as last corner sp)': behind stitches, what they are taken for together changes no count.</summary>
    private static bool ReadCountsAsGroup(Cursor cursor, StepList steps, int partner)
    {
        if (steps.Last is not (StitchStep or GroupStep) || !cursor.Inside(partner).Is(CountsAs)) return false;
        int from = cursor.At;
        cursor.At = partner + 1;
        AddRemark(cursor, steps, from);
        return true;
    }

    public static bool Read(Cursor cursor, StepList steps, int partner) =>
        ReadName(cursor, steps, partner) || ReadPlace(cursor, steps, partner) || ReadLength(cursor, steps, partner) || ReadCount(cursor, steps, partner) || ReadDefinition(cursor, steps, partner) || ReadAside(cursor, steps, partner) || ReadWords(cursor, steps, partner);

    /// <summary>'3 dc, ch 1, 3 dc in next loop (shell)': a name for what was just made.</summary>
    private static bool ReadName(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        Cursor inside = cursor.Inside(partner);
        if (TakeName(inside, steps.Last is GroupStep) is not { } stitch || !inside.AtEnd) return false;
        cursor.At = partner + 1;
        if (steps.Last is StitchStep { PerPlace: { IsPlain: true } several, Where: { } where } one && several.Values[0] > 1 && cursor.Context.IsGroup(stitch))
            steps.ReplaceLast(new GroupStep([one with { PerPlace = null, Count = several, Where = null }], where, one.Span.Through(cursor.SpanFrom(from))) { Named = stitch });
        else if (steps.Last is GroupStep group) steps.ReplaceLast(group with { Named = stitch, Span = group.Span.Through(cursor.SpanFrom(from)) });
        else AddRemark(cursor, steps, from);
        return true;
    }

    /// <summary>The stitch that a bracket's words name: known, or new and used later in the text.</summary>
    public static Terms.StitchId? TakeName(Cursor inside, bool ofGroup)
    {
        int from = inside.At;
        if (inside.Now is { Word: "a" or "an" or "one" or "the" }) inside.At++;
        if ((Clusters.Take(inside) ?? inside.TakeStitch()) is { } known)
        {
            inside.Take(NameTail);
            if (inside.AtEnd) return known;
        }
        inside.At = from;
        return GivenNames.Take(inside, ofGroup);
    }

    /// <summary>'(the same ch as the first sc)': a place that says more of the one just named.</summary>
    private static bool ReadPlace(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        Cursor inside = cursor.Inside(partner);
        if (Places.Placements.TakeBare(inside) is null || !inside.AtEnd) return false;
        cursor.At = partner + 1;
        AddRemark(cursor, steps, from);
        return true;
    }

    private static readonly Phrase Unit = new("in|inch|inches|cm|mm");

    /// <summary>'until it measures 20 cm (8 in)': the same length in another unit.</summary>
    private static bool ReadLength(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        Cursor inside = cursor.Inside(partner);
        if (Numbers.Take(inside) is null) return false;
        inside.Take(TokenKind.Fraction);
        if (!inside.Take(Unit) && !inside.Take(TokenKind.Quote)) return false;
        inside.Take(TokenKind.Dot);
        if (!inside.AtEnd) return false;
        cursor.At = partner + 1;
        AddRemark(cursor, steps, from);
        return true;
    }

    private static bool ReadCount(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        if (StatedCounts.Whole(cursor.Inside(partner), cursor.Context.Source) is not { } count) return false;
        cursor.At = partner + 1;
        steps.Add(new CountedSoFar(count with { Span = cursor.SpanFrom(from), Text = cursor.Slice(from, cursor.At) }, cursor.SpanFrom(from)));
        return true;
    }

    private static bool ReadDefinition(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        Cursor inside = cursor.Inside(partner);
        bool motions = MotionWords.AreIn(inside);
        if (!motions && !NamedWords(inside)) return false;
        InlineDefinitions.Add(inside, steps.Last is GroupStep);
        cursor.At = partner + 1;
        AddRemark(cursor, steps, from);
        return true;
    }

    /// <summary>'(cluster st: 3 d c in same sp …)': a name and a colon begin a definition.</summary>
    private static bool NamedWords(Cursor inside)
    {
        int from = inside.At;
        while (!inside.AtEnd && inside.At - from < 6 && inside.Kind is TokenKind.Word or TokenKind.Hyphen or TokenKind.Number) inside.At++;
        bool named = inside.At > from && inside.Kind == TokenKind.Colon;
        inside.At = from;
        return named;
    }

    private const int LongestTurning = 6;
    private static readonly Phrase Aside = new("or|a|any? or|a|any? multiple of");
    private static readonly Phrase PartOf = new("half|partial|full|quarter|beg|corner|last|first|large|small");

    /// <summary>'(multiple of 10 + 2)' behind a chain; '(half fan)' behind what is one.</summary>
    private static bool ReadAside(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        Cursor inside = cursor.Inside(partner);
        bool aside = steps.Last is ChainStep && inside.Is(Aside) || steps.Last is ChainStep { Count: { IsPlain: true } chains } && chains.Values[0] > LongestTurning && (inside.Now.Word is "count" or "includes" or "including" || inside.Kind == TokenKind.Number && (inside.Ahead(1).IsWord("plus") || inside.Ahead(1).Kind == TokenKind.Other || inside.Ahead(1).IsWord("for")));
        if (!aside)
        {
            bool part = false;
            while (inside.Take(PartOf)) part = true;
            aside = part && Places.PlaceNouns.Take(inside) is { Noun: PlaceNoun.Group };
            inside.Take(NameTail);
            aside &= inside.AtEnd;
        }
        if (!aside) return false;
        cursor.At = partner + 1;
        AddRemark(cursor, steps, from);
        return true;
    }

    /// <summary>Words without a stitch or a number in them are a remark.</summary>
    private static bool ReadWords(Cursor cursor, StepList steps, int partner)
    {
        int from = cursor.At;
        if (!RemarkWords.AreRemark(cursor.Inside(partner))) return false;
        cursor.At = partner + 1;
        AddRemark(cursor, steps, from);
        return true;
    }

    private static void AddRemark(Cursor cursor, StepList steps, int from) =>
        steps.Add(new RemarkStep(cursor.Slice(from, cursor.At), cursor.SpanFrom(from)));
}

/// <summary>A count met among the steps; the row takes the last one as its own, others are remarks. Never leaves the reader.</summary>
internal sealed record CountedSoFar(StatedCount Count, Text.TextSpan Span) : Step(Span);
