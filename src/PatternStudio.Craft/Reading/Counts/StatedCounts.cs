using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Counts;

/// <summary>Reads the count that a row states: '20 sts', '10 puffs, 11 sc, 1 ch-2 sp', '20, 30, 40 sts', '7 dc on each side — 28 dc in all'.</summary>
internal static class StatedCounts
{
    private static readonly Phrase Tail = new("in|total|all|made|remaining|left|counting|now|on|each|per|side|altogether|including|the|tch|row|rnd|around|across|ring|of|in|square|squares|corner|completed|complete");
    private static readonly Phrase Changed = new("increased|decreased|inc|dec|added|more|fewer");
    private static readonly Phrase WhatCounts = new("not? count|counting|including|includes|include|excluding|inclusive");
    private static readonly Phrase AtEndOf = new("at the? end of row|rnd #");
    private static readonly Phrase Lead = new("total|you|you'll|there|should|still|now|have|will|be|are|end|up|making|of|about|with|a|for|:");

    /// <summary>The count that the whole stretch states; null where it says anything else.</summary>
    public static StatedCount? Whole(Cursor stretch, SourceText source)
    {
        int from = stretch.At;
        StatedCount? count = Take(stretch);
        if (count is not null) TakeWhatCounts(stretch);
        // '[15 sc.]': the full stop within the brackets.
        while (count is not null && stretch.Kind == TokenKind.Dot) stretch.At++;
        if (count is null || !stretch.AtEnd)
        {
            stretch.At = from;
            return null;
        }
        return count;
    }

    /// <summary>'40 sts, counting the 3 missed ch as 1 tr', '24 dc, not including turning ch': what the number holds.</summary>
    public static bool TakeWhatCounts(Cursor stretch)
    {
        int from = stretch.At;
        // '20 dc (counting the beginning ch-3 as a dc)'
        if (stretch.Partner() is >= 0 and var partner && stretch.Inside(partner).Is(WhatCounts))
        {
            stretch.At = partner + 1;
            return true;
        }
        while (Cursor.IsSeparator(stretch.Kind) && stretch.Kind != TokenKind.Dot) stretch.At++;
        bool said = stretch.Take(WhatCounts);
        if (!said) stretch.At = from;
        while (said && !stretch.AtEnd && stretch.Kind is not (TokenKind.Dot or TokenKind.Open)) stretch.At++;
        return said;
    }

    /// <summary>Takes as many counts as stand here, parted by commas; null where none does.</summary>
    public static StatedCount? Take(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Take(Lead)) { }
        var items = new List<StatedItem>();
        int after;
        do
        {
            if (TakeItem(cursor) is not { } item) break;
            items.Add(item);
            after = cursor.At;
            while (cursor.Kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Dash or TokenKind.Slash or TokenKind.Star || cursor.Now.Word is "and" or "plus") cursor.At++;
            if (!StartsItem(cursor)) cursor.At = after;
        }
        while (cursor.At > after);
        if (items.Count == 0)
        {
            cursor.At = from;
            return null;
        }
        return new StatedCount(SizeCounts.Merge(items, cursor.Context.Sizes).ToEquatableArray(), cursor.Slice(from, cursor.At), cursor.SpanFrom(from));
    }

    private static bool StartsItem(Cursor cursor) => cursor.Kind == TokenKind.Number || cursor.Now.Form.Number is not null;

    private static StatedItem? TakeItem(Cursor cursor)
    {
        int from = cursor.At;
        if (Numbers.Take(cursor) is not { } number || IsInches(cursor)) return null;
        // '4 x 3-dc groups': so many of so many.
        bool timesMany = cursor.TakeWord("times") && Numbers.Take(cursor) is not null;
        cursor.Take(TokenKind.Hyphen);
        (CountedThing thing, PlaceKind? kind) = TakeThing(cursor);
        if (timesMany) thing = CountedThing.Other;
        // '11 groups of 3 dc': the number is that of the groups.
        if (kind?.Noun == PlaceNoun.Group && TakeOfMany(cursor) is not null) PlaceNouns.Take(cursor);
        int tail = cursor.At;
        // '14 sts, 2 sts increased', '24 sts increased in round': how many more, not how many there are.
        bool change = false;
        while (cursor.Take(AtEndOf) || cursor.Take(Tail) || cursor.Take(Changed) && (change = true)) { }
        if (change || PerSide(cursor, tail)) thing = CountedThing.Other;
        return new StatedItem(number, thing, kind, cursor.SpanFrom(from));
    }

    /// <summary>'20 cm (8 in)': a length, no stitches.</summary>
    private static bool IsInches(Cursor cursor) => cursor.Now.IsWord("in") && cursor.Ahead(1).Kind is TokenKind.End or TokenKind.Dot or TokenKind.Close;

    private static (CountedThing, PlaceKind?) TakeThing(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.TakeWord("row") || cursor.TakeWord("rnd")) return (CountedThing.Other, null);
        switch (PlaceNouns.Take(cursor))
        {
            case { Noun: PlaceNoun.ChainSpace } kind: return (CountedThing.ChainSpaces, kind);
            case { Noun: PlaceNoun.Space } when TakeLength(cursor) is { } chains: return (CountedThing.ChainSpaces, PlaceKind.ChainSpace(chains));
            case { Noun: PlaceNoun.Space } kind: return (CountedThing.Spaces, kind);
            case { Noun: PlaceNoun.Stitch } kind: return (CountedThing.Stitch, kind);
            case { Noun: PlaceNoun.Group } kind: return (CountedThing.Groups, kind);
            case { Noun: PlaceNoun.AnyStitch } kind: return (CountedThing.Stitches, kind);
            case { Noun: PlaceNoun.Chain or PlaceNoun.Corner } kind: return (CountedThing.Other, kind);
        }
        cursor.At = from;
        return TakesUnknown(cursor) ? (CountedThing.Other, null) : (CountedThing.Stitches, null);
    }

    /// <summary>'18 loops of 5 chain': how many chains each has.</summary>
    private static int? TakeLength(Cursor cursor)
    {
        int from = cursor.At;
        if (TakeOfMany(cursor) is { } chains && cursor.TakeWord("ch")) return chains;
        cursor.At = from;
        return null;
    }

    /// <summary>'of 3', 'of three': of how many each is.</summary>
    private static int? TakeOfMany(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.TakeWord("of") && Numbers.TakePlain(cursor) is { } many) return many;
        cursor.At = from;
        return null;
    }

    /// <summary>'35 patterns', '6 repeats', '49 squares'.</summary>
    private static bool TakesUnknown(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.At - from < 2 && cursor.Kind == TokenKind.Word && !IsTail(cursor) && cursor.Now.Word is not ("and" or "plus" or "times" or "in" or "more" or "inches" or "inch" or "cm")) cursor.At++;
        return cursor.At > from;
    }

    private static bool IsTail(Cursor cursor) => cursor.Is(Tail);

    private static bool PerSide(Cursor cursor, int tail)
    {
        for (int i = tail; i < cursor.At; i++)
            if (cursor.Context.Tokens[i].Word is "each" or "per" or "side") return true;
        return false;
    }
}
