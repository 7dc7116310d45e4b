using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads places that are more than a stitch in its turn: over several, between two, row ends, the other side, the turning chain.</summary>
internal static class SpecialPlaces
{
    private static readonly Phrase OverThis = new("over this");
    private static readonly Phrase Over = new("over|across the? next");
    private static readonly Phrase OverFirst = new("over|across the? first|last");
    private static readonly Phrase TheOneInRow = new("# in|of the? ## row|rnd");
    private static readonly Phrase OverPlace = new("over|under the? next|each|same?");
    private static readonly Phrase Between = new("in? the? sp? between the? next|first|last|any?");
    private static readonly Phrase BackOfWork = new("in|at|on|from the? back|front of the? work");
    private static readonly Phrase TopOfTurning = new("in|on|to the? top st? of the?");
    private static readonly Phrase InTurning = new("in|on|over|under|to the?");
    private static readonly Phrase WhichChain = new("beg|turn|first|initial|the|prev|row|rnd");
    private static readonly Phrase Space = new("sp|loop");
    private static readonly Phrase And = new("and");
    private static readonly Phrase Part = new("in|at|to|on|around the? next|same|first|last? base|tip|foot|bottom|joining|join|seam|neck");
    private static readonly Phrase Remainder = new("over|in|on the? remainder|rest of the? prev|last|first|same? ch?");
    private static readonly Phrase AndThe = new("and the? next|last|first?");
    private static readonly Phrase OverWords = new("over|in the?");
    private static readonly Phrase FromHook = new("from the|your? hook");
    private static readonly Phrase LastMade = new("the? last|this|that");
    private static readonly Phrase BegStitch = new("the? first|beg");
    private static readonly Phrase JustMade = new("just? make|work");

    public static Placement? Take(Cursor cursor)
    {
        int from = cursor.At;
        foreach (Func<Cursor, int, Placement?> read in Readers)
        {
            cursor.At = from;
            if (read(cursor, from) is { } placement) return placement with { Span = cursor.SpanFrom(from) };
        }
        cursor.At = from;
        return null;
    }

    private static readonly Func<Cursor, int, Placement?>[] Readers = [TakeAlongEdge, TakeRemainder, TakeOverChains, TakeOver, TakeBetween, TakeTopOfTurning, TakeTurning, TakeTopOfStitch, TakeBaseOfChain, TakePart, TakeUnderLoop];

    /// <summary>'over next 2 sts': one stitch takes them all. 'over next ch-2 sp' is just a place.</summary>
    private static Placement? TakeOver(Cursor cursor, int from)
    {
        if (cursor.Take(OverThis)) return PlaceNouns.Take(cursor) is { } here ? new Placement(PlaceChoice.Same, here, default) : null;
        if (!cursor.Take(Over) && !cursor.Take(OverFirst)) return null;
        SizedNumber? count = Numbers.Take(cursor);
        if (PlaceNouns.Take(cursor) is not { } kind) return null;
        bool joins = count is not null || cursor.Is(And);
        return new Placement(joins ? PlaceChoice.Over : PlaceChoice.Next, kind, default) { Count = count };
    }

    private static Placement? TakeBetween(Cursor cursor, int from)
    {
        cursor.Take(BackOfWork);
        if (!cursor.Take(Between)) return null;
        int? ordinal = Numbers.TakeOrdinal(cursor);
        if (ordinal is not null && cursor.Take(And)) Numbers.TakeOrdinal(cursor);
        cursor.TakeWord("next");
        SizedNumber? count = Numbers.Take(cursor);
        if (PlaceNouns.Take(cursor) is not { } kind) return null;
        int after = cursor.At;
        if (!cursor.Take(AndThe) || PlaceNouns.Take(cursor) is null) cursor.At = after;
        return new Placement(PlaceChoice.Between, kind, default) { Count = count, Ordinal = ordinal };
    }

    /// <summary>'in top of tch', 'in top of beg ch-3', 'in top of ch-3'. 'In top of last sc' is another matter.</summary>
    private static Placement? TakeTopOfTurning(Cursor cursor, int from)
    {
        if (!cursor.Take(TopOfTurning)) return null;
        if (TakeNumberOfChains(cursor) is { } chains) return new Placement(PlaceChoice.TurningChainTop, PlaceKind.TurningChain with { Chains = chains }, default);
        return PlaceNouns.Take(cursor) switch
        {
            { Noun: PlaceNoun.TurningChain or PlaceNoun.ChainSpace or PlaceNoun.Chain } kind =>
                new Placement(PlaceChoice.TurningChainTop, PlaceKind.TurningChain with { Chains = kind.Chains }, default),
            _ => null,
        };
    }

    /// <summary>'top of 3 ch', 'top of beginning 3-ch': the number first, as UK patterns write it.</summary>
    private static int? TakeNumberOfChains(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Take(WhichChain)) { }
        if (cursor.Kind == TokenKind.Number && Numbers.TakePlain(cursor) is { } chains)
        {
            cursor.Take(TokenKind.Hyphen);
            cursor.Take(WhichChain);
            if (cursor.TakeWord("ch") && !cursor.Is(Space)) return chains;
        }
        cursor.At = from;
        return null;
    }

    private static Placement? TakeTurning(Cursor cursor, int from)
    {
        if (!cursor.Take(InTurning) || PlaceNouns.Take(cursor) is not { Noun: PlaceNoun.TurningChain } kind) return null;
        cursor.Take(TokenKind.Hyphen);
        bool space = cursor.Take(Space);
        return new Placement(space ? PlaceChoice.TurningChainSpace : PlaceChoice.TurningChainTop, kind, default);
    }

    /// <summary>'in top of last sc': a stitch just made or of the row below, as the words choose.</summary>
    private static Placement? TakeTopOfStitch(Cursor cursor, int from)
    {
        if (!cursor.Take(TopOfTurning)) return null;
        if (cursor.Take(LastMade) && PlaceNouns.Take(cursor) is { } last) return Made(cursor, last);
        if (cursor.Take(BegStitch) && PlaceNouns.Take(cursor) is { } first) return new Placement(PlaceChoice.First, first, default);
        cursor.TakeWord("same");
        cursor.TakeWord("next");
        return PlaceNouns.Take(cursor) is { } kind ? Made(cursor, kind) : null;
    }

    private static Placement Made(Cursor cursor, PlaceKind kind)
    {
        cursor.Take(JustMade);
        return new Placement(PlaceChoice.JustMade, kind, default);
    }

    private static readonly Phrase BaseOf = new("in|at the? st? at|in? the? base|bottom|foot of the?");

    /// <summary>'in st at base of ch', 'at the base of the turning chain': the stitch that the chain stands on.</summary>
    private static Placement? TakeBaseOfChain(Cursor cursor, int from)
    {
        if (!cursor.Take(BaseOf)) return null;
        cursor.Take(WhichChain);
        bool chain = TakeNumberOfChains(cursor) is not null || PlaceNouns.Take(cursor) is { Noun: PlaceNoun.TurningChain or PlaceNoun.Chain or PlaceNoun.ChainSpace };
        return chain ? new Placement(PlaceChoice.Same, PlaceKind.AnyStitch, default) : null;
    }

    /// <summary>'in base of 1st petal', 'in joining': a part that no stitch of the row below names.</summary>
    private static Placement? TakePart(Cursor cursor, int from)
    {
        if (!cursor.Take(Part)) return null;
        int part = cursor.At;
        if (PlaceNouns.Take(cursor) is not null) return null;
        cursor.At = part;
        FurtherWords.Take(cursor);
        return new Placement(PlaceChoice.Next, PlaceKind.AnyStitch, default) { Further = cursor.SpanFrom(from) };
    }

    /// <summary>'over remainder of 1st loop': the other half of the loop in which the round began; 'over remainder of previous loop': that loop is worked into already.</summary>
    private static Placement? TakeRemainder(Cursor cursor, int from)
    {
        if (cursor.Take(RemainderOfFirst) && PlaceNouns.Take(cursor) is { Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } first) return new Placement(PlaceChoice.First, first, default);
        cursor.At = from;
        return cursor.Take(Remainder) && PlaceNouns.Take(cursor) is { Noun: PlaceNoun.Space or PlaceNoun.ChainSpace } kind ? new Placement(PlaceChoice.JustMade, kind, default) : null;
    }

    private static readonly Phrase RemainderOfFirst = new("in|over the? remainder|rest of the? first|same");

    private static Placement? TakeAlongEdge(Cursor cursor, int from) => RowEndPlaces.Take(cursor);

    /// <summary>'over 2nd and 3rd chs from hook'.</summary>
    private static Placement? TakeOverChains(Cursor cursor, int from)
    {
        cursor.Take(OverWords);
        if (Numbers.TakeOrdinal(cursor) is not { } first || !cursor.Take(And) || Numbers.TakeOrdinal(cursor) is not { } second || second != first + 1) return null;
        if (PlaceNouns.Take(cursor) is not { } kind || !cursor.Take(FromHook)) return null;
        return new Placement(PlaceChoice.FromHook, kind, default) { Ordinal = first, Count = SizedNumber.Of(2) };
    }

    /// <summary>'over the 1 in 5th round': the stitch there.</summary>
    private static Placement TakeOneInRow(Cursor cursor)
    {
        cursor.Take(OverPlace);
        cursor.At++;
        return new Placement(PlaceChoice.Next, PlaceKind.AnyStitch, default);
    }

    /// <summary>'over ch-2 sp', 'under next loop', 'over each loop'.</summary>
    private static Placement? TakeUnderLoop(Cursor cursor, int from)
    {
        if (!cursor.Take(OverPlace)) return null;
        if (cursor.Take(TheOneInRow)) { cursor.At = from; return TakeOneInRow(cursor); }
        bool each = cursor.Ahead(-1).IsWord("each"), same = cursor.Ahead(-1).IsWord("same");
        if (each) cursor.TakeWord("remaining");
        if (PlaceNouns.Take(cursor) is not { } kind) return null;
        if (kind.Noun == PlaceNoun.Ring) return new Placement(PlaceChoice.InRing, kind, default);
        return new Placement(each ? PlaceChoice.Each : same ? PlaceChoice.Same : PlaceChoice.Next, kind, default);
    }
}
