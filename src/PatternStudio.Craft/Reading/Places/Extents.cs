using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads how far a repeat or an 'each' goes: 'across', 'around', '5 times', 'to last 2 sts'.</summary>
internal static class Extents
{
    private static readonly Phrase Around = new("evenly? all? the? way? around the?");
    private static readonly Phrase Round = new("all the? way? rnd");
    private static readonly Phrase AcrossTheRow = new("evenly? all? across row|rnd|side|the?");
    private static readonly Phrase ToEnd = new("to|until|till the? end");
    /// <summary>'until you reach the end'.</summary>
    public static readonly Phrase ReachEnd = new("until|till you reach|get|come to? the? end");
    private static readonly Phrase OfRow = new("of? the|this|each? row|rnd|ch|tch");
    private static readonly Phrase ToLast = new("to|until|till within? the? last");
    private static readonly Phrase ToWithin = new("to within");
    private static readonly Phrase OfEnd = new("of the? end|last|row|rnd");
    private static readonly Phrase Until = new("until|till");
    private static readonly Phrase Remain = new("remaining|left");
    private static readonly Phrase ToPlace = new("to|until|up the? next|first? the?");
    private static readonly Phrase FromEnd = new("from the? end");
    private static readonly Phrase CenterOf = new("center");
    private static readonly Phrase OfNext = new("of the? next?");
    private static readonly Phrase Once = new("once");
    private static readonly Phrase Twice = new("twice");
    private static readonly Phrase Thrice = new("thrice");
    private static readonly Phrase More = new("more|again|additional|further");
    private static readonly Phrase Times = new("times");
    private static readonly Phrase AFurther = new("a? further|another|for?");

    /// <summary>Takes an extent; null where none stands here. '5 times' counts as written here; the star's 'once more' is added by its reader.</summary>
    public static Extent? Take(Cursor cursor)
    {
        int from = cursor.At;
        Extent? extent = TakeTimes(cursor) ?? TakeSweep(cursor) ?? TakeUpTo(cursor);
        if (extent is null) cursor.At = from;
        return extent;
    }

    /// <summary>True at 'to end' and 'to last 2 sts', which sweep over stitches and name no place to work into.</summary>
    public static bool IsSweep(Cursor cursor)
    {
        if (!cursor.Now.IsWord("to")) return false;
        int from = cursor.At;
        bool sweep = TakeUpTo(cursor) is { Kind: ExtentKind.ToEnd } or { Kind: ExtentKind.ToLast, Count.Values: [> 1, ..] };
        cursor.At = from;
        return sweep;
    }

    /// <summary>'5 times', 'twice', 'x 6', '3 more times', 'a further 15 times'.</summary>
    public static Extent? TakeTimes(Cursor cursor)
    {
        int from = cursor.At;
        if (TakeTimesNumber(cursor) is { } number)
        {
            cursor.Take(More);
            return new Extent(ExtentKind.Times, cursor.SpanFrom(from)) { Count = number };
        }
        cursor.At = from;
        return null;
    }

    private static SizedNumber? TakeTimesNumber(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Once)) return SizedNumber.Of(1, cursor.SpanFrom(from));
        if (cursor.Take(Twice)) return SizedNumber.Of(2, cursor.SpanFrom(from));
        if (cursor.Take(Thrice)) return SizedNumber.Of(3, cursor.SpanFrom(from));
        if (cursor.Take(Times)) return Numbers.Take(cursor);
        cursor.Take(AFurther);
        if (Numbers.Take(cursor) is not { } number) return null;
        cursor.Take(More);
        return cursor.Take(Times) ? number : null;
    }

    private static Extent? TakeSweep(Cursor cursor)
    {
        int from = cursor.At;
        bool around = cursor.Take(Around) || cursor.Take(Round);
        bool across = !around && cursor.Take(AcrossTheRow);
        if (around || across)
        {
            int swept = cursor.At;
            cursor.Take(TokenKind.Comma);
            if (TakeUpTo(cursor) is { } upTo) return upTo with { Span = cursor.SpanFrom(from), Around = around };
            cursor.At = swept;
            TakeOfRow(cursor);
            return new Extent(ExtentKind.ToEnd, cursor.SpanFrom(from)) { Around = around };
        }
        return null;
    }

    /// <summary>'to end', 'to last 2 sts', 'until 3 sts remain', 'to next corner'.</summary>
    private static Extent? TakeUpTo(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(ToEnd) || cursor.Take(ReachEnd))
        {
            bool around = cursor.Ahead(1).IsWord("rnd") || cursor.Ahead(2).IsWord("rnd");
            TakeOfRow(cursor);
            return new Extent(ExtentKind.ToEnd, cursor.SpanFrom(from)) { Around = around };
        }
        return TakeToNth(cursor, from) ?? TakeToLast(cursor, from) ?? TakeUntilRemain(cursor, from) ?? TakeToPlace(cursor, from);
    }

    private static void TakeOfRow(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(OfRow) || cursor.At == from + 1 && cursor.Ahead(-1).IsWord("of")) cursor.At = from;
        else if (cursor.Ahead(-1) is { Word: not ("row" or "rnd" or "ch" or "tch") }) cursor.At = from;
    }

    private static Extent? TakeToLast(Cursor cursor, int from)
    {
        cursor.At = from;
        bool within = !cursor.Is(ToLast) && cursor.Take(ToWithin);
        if (!within && !cursor.Take(ToLast)) return null;
        SizedNumber count = Numbers.Take(cursor) ?? SizedNumber.Of(1, cursor.SpanFrom(cursor.At));
        PlaceKind? kind = PlaceNouns.Take(cursor);
        if (within) cursor.Take(OfEnd);
        return kind is null && count.Span.Length == 0 && !(cursor.AtEnd || Cursor.IsSeparator(cursor.Kind)) ? null : new Extent(ExtentKind.ToLast, cursor.SpanFrom(from)) { Count = count, Place = kind };
    }

    /// <summary>'until 2nd s c from end': that one is the last to be worked, so one stays.</summary>
    private static Extent? TakeToNth(Cursor cursor, int from)
    {
        cursor.At = from;
        if (!cursor.Take(ToPlace) || Numbers.TakeOrdinal(cursor) is not { } nth || PlaceNouns.Take(cursor) is not { } kind || !cursor.Take(FromEnd)) return null;
        return new Extent(ExtentKind.ToLast, cursor.SpanFrom(from)) { Count = SizedNumber.Of(Math.Max(0, nth - 1)), Place = kind };
    }

    private static Extent? TakeUntilRemain(Cursor cursor, int from)
    {
        cursor.At = from;
        if (!cursor.Take(Until) || Numbers.Take(cursor) is not { } count) return null;
        PlaceKind? kind = PlaceNouns.Take(cursor);
        return cursor.Take(Remain) ? new Extent(ExtentKind.ToLast, cursor.SpanFrom(from)) { Count = count, Place = kind } : null;
    }

    private static Extent? TakeToPlace(Cursor cursor, int from)
    {
        cursor.At = from;
        if (!cursor.Take(ToPlace)) return null;
        // 'to center ch-3 sp', 'to center of next loop'
        if (cursor.Take(CenterOf) && PlaceNouns.Take(cursor) is { } center && !cursor.Take(OfNext) && center is { Noun: PlaceNoun.ChainSpace, Chains: not null } or { Noun: PlaceNoun.Corner })
            return new Extent(ExtentKind.ToPlace, cursor.SpanFrom(from)) { Place = center };
        return PlaceNouns.Take(cursor) is { } kind ? new Extent(ExtentKind.ToPlace, cursor.SpanFrom(from)) { Place = kind } : null;
    }
}
