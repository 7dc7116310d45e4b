using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads 'next 3 dc', 'each of the first 2 sts', 'same sp', '2nd ch', 'last sc', 'ring': a noun and the words that choose it.</summary>
internal static class Determined
{
    private static readonly Phrase The = new("the|this|that|these|a|all|both");
    private static readonly Phrase Each = new("each and? each? one? of?");
    private static readonly Phrase Next = new("next");
    private static readonly Phrase Remaining = new("the? remaining|rest of? the?");
    private static readonly Phrase Same = new("same");
    private static readonly Phrase Last = new("last");
    private static readonly Phrase First = new("first");
    private static readonly Phrase Center = new("the? center of?");
    private static readonly Phrase CenterOfEach = new("the? center st? of each");
    private static readonly Phrase Skipped = new("next|last? skip|unworked|missed");
    private static readonly Phrase OfWhich = new("the|next|same|each|last|that|this|first|any");
    private static readonly Phrase Marked = new("marked");
    private static readonly Phrase Following = new("first|next|center|last");
    private static readonly Phrase OfTheChain = new("st? of the? ch");
    private static readonly Phrase SpaceWord = new("sp|loop|mesh");
    private static readonly Phrase Other = new("other");
    private static readonly Phrase Any = new("any");
    private static readonly Phrase EndWord = new("end");
    private static readonly Phrase InNthRow = new("in|of ## row|rnd");
    private static readonly Phrase Indicated = new("indicated|designated|stated|specified");

    public static Placement? Take(Cursor cursor)
    {
        int from = cursor.At;
        bool all = cursor.Take(The) && cursor.Ahead(-1) is { Word: "all" or "both" };
        Placement? placement = (all ? TakeAll(cursor) : null) ?? TakeSkipped(cursor) ?? TakeEach(cursor) ?? TakeNext(cursor) ?? TakeSame(cursor) ?? TakeLast(cursor) ?? TakeOrdinal(cursor) ?? TakeCenter(cursor) ?? TakeBare(cursor);
        if (placement is null) cursor.At = from;
        return placement;
    }

    private static Placement Of(PlaceChoice choice, PlaceKind? kind, SizedNumber? count = null) =>
        new(choice, kind ?? PlaceKind.AnyStitch, default) { Count = count };

    /// <summary>'all 12 sts', 'all sts'.</summary>
    private static Placement? TakeAll(Cursor cursor)
    {
        int from = cursor.At;
        cursor.TakeWord("the");
        SizedNumber? count = TakeCount(cursor);
        if (PlaceNouns.Take(cursor) is { } kind) return Of(PlaceChoice.Each, kind, count) with { Extent = count is null ? new Extent(ExtentKind.ToEnd, default) : null };
        cursor.At = from;
        return null;
    }

    private static Placement? TakeSkipped(Cursor cursor)
    {
        int from = cursor.At;
        int? ordinal = Numbers.TakeOrdinal(cursor);
        if (cursor.Take(Skipped))
        {
            SizedNumber? count = Numbers.Take(cursor);
            if (PlaceNouns.Take(cursor) is { } kind) return Of(PlaceChoice.Skipped, kind, count) with { Ordinal = ordinal };
        }
        cursor.At = from;
        // 'each of the 2 skipped dc', '2 skipped sts'
        if (cursor.Take(Each)) cursor.Take(The);
        if (Numbers.Take(cursor) is { } several && cursor.Take(Skipped) && PlaceNouns.Take(cursor) is { } passed) return Of(PlaceChoice.Skipped, passed, several);
        cursor.At = from;
        if (cursor.Take(Marked) && PlaceNouns.Take(cursor) is { } marked) return Of(PlaceChoice.Marked, marked);
        cursor.At = from;
        return null;
    }

    private static Placement? TakeEach(Cursor cursor)
    {
        if (cursor.Take(Remaining)) return Of(PlaceChoice.Each, PlaceNouns.Take(cursor)) with { Extent = new Extent(ExtentKind.ToEnd, default) };
        if (!cursor.Take(Each)) return null;
        cursor.Take(The);
        if (cursor.Take(Remaining)) return Of(PlaceChoice.Each, PlaceNouns.Take(cursor)) with { Extent = new Extent(ExtentKind.ToEnd, default) };
        if (TakeEveryNth(cursor) is { } nth) return nth;
        PlaceChoice choice = cursor.Take(Next) ? PlaceChoice.Each : cursor.Take(Last) ? PlaceChoice.Last : TakeFirst(cursor) ? PlaceChoice.First : PlaceChoice.Each;
        SizedNumber? count = TakeCount(cursor);
        // 'each of 4 remaining sc': their number says which, whatever they are called.
        if (count is not null && cursor.TakeWord("remaining")) return PlaceNouns.Take(cursor) is null ? Of(choice, null, count) : Of(choice, PlaceKind.AnyStitch, count);
        return Of(choice, PlaceNouns.Take(cursor), count);
    }

    /// <summary>'every other st', 'every 3rd sc'.</summary>
    private static Placement? TakeEveryNth(Cursor cursor)
    {
        int from = cursor.At;
        int? every = cursor.Take(Other) ? 2 : Numbers.TakeOrdinal(cursor) is > 1 and { } n ? n : null;
        if (every is not null) return Of(PlaceChoice.Each, PlaceNouns.Take(cursor)) with { EveryNth = every, Further = cursor.SpanFrom(from) };
        cursor.At = from;
        return null;
    }

    private static bool TakeFirst(Cursor cursor) => cursor.Is(First) && Numbers.TakeOrdinal(cursor) == 1;

    /// <summary>A count of places: not the number of '3 ch loop', which belongs to the loop.</summary>
    private static SizedNumber? TakeCount(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Kind == TokenKind.Number && PlaceNouns.Take(cursor) is { Noun: PlaceNoun.ChainSpace })
        {
            cursor.At = from;
            return null;
        }
        cursor.At = from;
        return Numbers.Take(cursor);
    }

    private static Placement? TakeNext(Cursor cursor)
    {
        if (!cursor.Take(Next)) return null;
        SizedNumber? count = TakeCount(cursor);
        return Of(PlaceChoice.Next, PlaceNouns.Take(cursor), count);
    }

    private static Placement? TakeSame(Cursor cursor) =>
        cursor.Take(Same) ? Of(PlaceChoice.Same, PlaceNouns.Take(cursor)) : null;

    private static Placement? TakeLast(Cursor cursor)
    {
        if (!cursor.Take(Last) && !(cursor.Is(EndWord) && !cursor.Ahead(1).IsWord("of") && cursor.Take(EndWord))) return null;
        SizedNumber? count = TakeCount(cursor);
        return Of(PlaceChoice.Last, PlaceNouns.Take(cursor), count);
    }

    /// <summary>'first 2 sc', '2nd ch', 'third dc'.</summary>
    private static Placement? TakeOrdinal(Cursor cursor)
    {
        if (Numbers.TakeOrdinal(cursor) is not { } ordinal) return null;
        SizedNumber? count = ordinal == 1 ? TakeCount(cursor) : null;
        int noun = cursor.At;
        PlaceKind? kind = PlaceNouns.Take(cursor);
        if (count is null && kind?.Noun == PlaceNoun.Chain && OfChain(cursor, noun)) return Of(PlaceChoice.TurningChainTop, kind) with { Ordinal = ordinal, Within = PlaceKind.TurningChain };
        return ordinal == 1 ? Of(PlaceChoice.First, kind, count) : Of(PlaceChoice.Nth, kind) with { Ordinal = ordinal };
    }

    /// <summary>'3rd st of ch' is the old booklets' top of the beginning chain.</summary>
    private static bool OfChain(Cursor cursor, int noun)
    {
        for (int i = noun; i < cursor.At; i++)
            if (cursor.Context.Tokens[i].IsWord("of")) return true;
        return false;
    }

    private static Placement? TakeCenter(Cursor cursor) =>
        TakeEachCenter(cursor) ?? (cursor.Take(Center) ? Of(PlaceChoice.Centre, TakeCenterNoun(cursor)) : null);

    /// <summary>'in centre of each loop': each loop.</summary>
    private static Placement? TakeEachCenter(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(CenterOfEach) && PlaceNouns.Take(cursor) is { Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } loop) return Of(PlaceChoice.Each, loop);
        cursor.At = from;
        return null;
    }

    /// <summary>'center of 1st shell', 'center st of next loop', 'center picot'.</summary>
    private static PlaceKind? TakeCenterNoun(Cursor cursor)
    {
        if (cursor.Ahead(-1).IsWord("of"))
            while (cursor.Take(OfWhich) || Numbers.TakeOrdinal(cursor) is not null) { }
        SizedNumber? several = TakeCount(cursor);
        return PlaceNouns.Take(cursor) ?? (several is null ? null : PlaceKind.AnyStitch);
    }

    /// <summary>'in 10 stitches', 'on the 5 double', 'in the 3 following stitches', 'over the 4 chain'.</summary>
    private static Placement? TakeNumbered(Cursor cursor)
    {
        int from = cursor.At;
        if (Numbers.Take(cursor) is { IsPlain: true } count)
        {
            while (cursor.Take(Following)) { }
            if (cursor.Ahead(-1) is { Kind: TokenKind.Ordinal } or { Word: "first" } && cursor.Take(OfTheChain)) return Of(PlaceChoice.Next, PlaceKind.Chain, count);
            int noun = cursor.At;
            if (cursor.TakeWord("ch") && count.Values[0] > 1 && cursor.Kind is not TokenKind.Hyphen)
            {
                cursor.TakeWord("st");
                cursor.Take(SpaceWord);
                return Of(PlaceChoice.Next, PlaceKind.ChainSpace(count.Values[0]));
            }
            cursor.At = noun;
            if (count.Values[0] == 1 && cursor.Is(InNthRow)) return Of(PlaceChoice.Next, PlaceKind.AnyStitch);
            if (PlaceNouns.Take(cursor) is { } kind) return Of(PlaceChoice.Next, kind, count);
        }
        cursor.At = from;
        return null;
    }

    private static Placement? TakeBare(Cursor cursor)
    {
        if (cursor.TakeWord("it")) return Of(PlaceChoice.Same, null);
        if (cursor.Take(Any)) return PlaceNouns.Take(cursor) is { } any ? Of(PlaceChoice.Next, any) : null;
        if (TakeNumbered(cursor) is { } numbered) return numbered;
        cursor.Take(Indicated);
        return PlaceNouns.Take(cursor) switch
        {
            null => null,
            { Noun: PlaceNoun.Ring } => Of(PlaceChoice.InRing, PlaceKind.Ring),
            { } kind => Of(PlaceChoice.Next, kind),
        };
    }
}
