using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>
/// What a chain is said to stand for: 'counts as dc here and throughout', 'does not count as a st', 'counts as dc and ch 2', 'skipped chs count as dc and 1 skipped ch'.
/// </summary>
/// <param name="ThenSkips">The chains of the foundation left unworked beside the stitch: 1 in 'dc, ch 1 and 1 skipped ch'; null where the words don't say.</param>
internal sealed record CountsAsWords(ChainRole Role, StitchId? Stitch, int ThenChains, int? ThenSkips = null)
{
    private static readonly Phrase DoesNot = new("does|do|will|is|are not|n't count");
    private static readonly Phrase Doesnt = new("doesn't|don't|not|never count");
    private static readonly Phrase NotAStitch = new("is? not a st");
    private static readonly Phrase Counts = new("always|will|to|now|which|that|and|does? count");
    private static readonly Phrase As = new("as|for|in");
    private static readonly Phrase Article = new("the|a|an|one|first|1|your");
    private static readonly Phrase Stitch1 = new("a|one? st");
    private static readonly Phrase OneOf = new("the|a|an|one?");
    private static readonly Phrase LeftUnworked = new("skip|unworked|base|foundation|fnd|empty");
    private static readonly Phrase Throughout = new("here|now|there? and? throughout|here|hereafter|after|always?");

    public ChainStep Of(ChainStep chain) => chain with { Role = Role, CountsAs = Stitch, ThenChains = ThenChains };

    /// <summary>Takes the words; null where they don't stand here.</summary>
    public static CountsAsWords? Take(Cursor cursor)
    {
        int from = cursor.At;
        TakeSubject(cursor);
        int words = cursor.At;
        CountsAsWords? said = TakeNot(cursor) ?? TakeCounts(cursor);
        if (said is null)
        {
            cursor.At = words;
            said = TakeCounting(cursor);
        }
        if (said is null) cursor.At = from;
        else cursor.Take(Throughout);
        return said;
    }

    /// <summary>Reads the whole of a bracket's words; null where they say something else.</summary>
    public static CountsAsWords? Whole(Cursor inside)
    {
        if (Take(inside) is not { } said) return null;
        inside.SkipSeparators();
        while (!inside.AtEnd && inside.Kind == TokenKind.Word && inside.Now.Word is "here" or "now" or "next" or "and" or "throughout" or "in" or "all" or "row" or "rnd" or "st" or "on" or "this" or "the" or "each" or "at" or "beg" or "of" or "pattern" or "from" or "out") inside.At++;
        return inside.AtEnd ? said : null;
    }

    /// <summary>'skipped 3 chs', 'first 3 skipped chs', 'beg ch-3', 'tch', 'this': taken only before 'count'.</summary>
    private static void TakeSubject(Cursor cursor)
    {
        int from = cursor.At;
        for (int words = 0; words < 7 && !cursor.AtEnd; words++)
        {
            if (cursor.Now.IsWord("count") || cursor.Is(DoesNot) || cursor.Is(Doesnt)) return;
            if (!IsOfSubject(cursor.Now)) break;
            cursor.At++;
        }
        if (!cursor.Now.IsWord("count") && !cursor.Is(DoesNot) && !cursor.Is(Doesnt)) cursor.At = from;
    }

    private static bool IsOfSubject(in Token token) =>
        token.Kind is TokenKind.Number or TokenKind.Hyphen || token.Form.Number is not null
        || token.Word is "the" or "this" or "that" or "these" or "first" or "beg" or "turn" or "tch" or "t" or "skip" or "unworked" or "ch" or "st" or "of" or "at" or "always" or "will" or "which" or "to" or "missed";

    private static CountsAsWords? TakeNot(Cursor cursor)
    {
        if (cursor.Take(NotAStitch)) return new CountsAsWords(ChainRole.DoesNotCount, null, 0);
        if (!cursor.Take(DoesNot) && !cursor.Take(Doesnt)) return null;
        if (cursor.Take(As)) TakeThing(cursor);
        return new CountsAsWords(ChainRole.DoesNotCount, null, 0);
    }

    /// <summary>'counting the beginning ch-3 as a dc', 'counting tch as 1 st'.</summary>
    private static CountsAsWords? TakeCounting(Cursor cursor)
    {
        if (!cursor.TakeWord("count")) return null;
        int words = cursor.At;
        while (!cursor.AtEnd && IsOfSubject(cursor.Now) && !cursor.Is(As)) cursor.At++;
        return cursor.At > words && cursor.Take(As) && TakeThing(cursor) is { } thing ? new CountsAsWords(ChainRole.Counts, thing.Stitch, 0) : null;
    }

    private static CountsAsWords? TakeCounts(Cursor cursor)
    {
        // '3 ch (= 1 dc)'; '(= 20 sts)' is a count.
        bool equal = cursor.Kind == TokenKind.Equal && cursor.Ahead(1) is not { Kind: TokenKind.Number, Value: > 1 } && cursor.Take(TokenKind.Equal);
        if (!equal && (!cursor.Take(Counts) || !cursor.Take(As))) return null;
        if (TakeSpace(cursor) is { } space) return new CountsAsWords(ChainRole.Counts, null, space);
        // The same things in whatever order: 'dc, ch 1 and 1 skipped ch' from the hook, '1 skipped ch, ch 1 and dc' from the foundation.
        int? skips = TakeSkipped(cursor);
        int chains = skips is null ? 0 : TakeChains(cursor);
        if (skips is not null) TakeJoiner(cursor);
        if (TakeThing(cursor) is not { } thing) return null;
        for (int more = 0; more < 2; more++)
        {
            if (chains == 0) chains = TakeThenChains(cursor);
            int from = cursor.At;
            TakeJoiner(cursor);
            if (cursor.At > from && TakeSkipped(cursor) is { } skipped) skips = skipped + (skips ?? 0);
            else cursor.At = from;
        }
        return new CountsAsWords(ChainRole.Counts, thing.Stitch, chains, skips);
    }

    /// <summary>'1 skipped ch', 'a base ch', '2 unworked chs'.</summary>
    private static int? TakeSkipped(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(OneOf);
        int chains = Numbers.TakePlain(cursor) ?? 1;
        bool told = false;
        while (cursor.Take(LeftUnworked)) told = true;
        if (told && cursor.TakeWord("ch") && cursor.Now.Word is not ("sp" or "loop")) return chains;
        cursor.At = from;
        return null;
    }

    private static void TakeJoiner(Cursor cursor)
    {
        while (cursor.Kind is TokenKind.Comma or TokenKind.Other || cursor.Now.Word is "and" or "plus" or "with" or "+") cursor.At++;
    }

    /// <summary>'the last ch-4 sp'.</summary>
    private static int? TakeSpace(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Take(Article) || cursor.TakeWord("last") || cursor.TakeWord("next")) { }
        if (Places.PlaceNouns.Take(cursor) is { Noun: PlaceNoun.ChainSpace, Chains: { } chains } && cursor.Ahead(-1).Word is "sp" or "loop") return chains;
        cursor.At = from;
        return null;
    }

    /// <summary>'the first dc', 'a st', '2 tr'.</summary>
    private static (StitchId? Stitch, bool Any)? TakeThing(Cursor cursor)
    {
        while (cursor.Take(Article)) { }
        Numbers.TakePlain(cursor);
        if (cursor.Take(Stitch1)) return (null, true);
        return cursor.TakeStitch() is { } stitch ? (stitch, false) : null;
    }

    /// <summary>'and ch 2', ', ch 1', '+ ch-1 sp'; a second stitch after it is the one just worked.</summary>
    private static int TakeThenChains(Cursor cursor)
    {
        int chains = TakeChains(cursor), after = cursor.At;
        if (chains == 0) return 0;
        while (cursor.Kind == TokenKind.Comma || cursor.Now.IsWord("and")) cursor.At++;
        if (cursor.Now.IsWord("skip") || cursor.TakeStitch() is null) cursor.At = after;
        return chains;
    }

    private static int TakeChains(Cursor cursor)
    {
        int from = cursor.At;
        TakeJoiner(cursor);
        cursor.Take(OneOf);
        int? before = Numbers.TakePlain(cursor);
        if (cursor.At == from || !cursor.TakeWord("ch"))
        {
            cursor.At = from;
            return 0;
        }
        cursor.Take(TokenKind.Hyphen);
        // 'and 1 ch-1 sp': one space of one chain.
        int? length = Numbers.TakePlain(cursor);
        int chains = length ?? before ?? 1;
        cursor.TakeWord("sp");
        return chains;
    }
}
