using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads what follows a place and narrows it: 'from hook', 'of next shell', 'just made', 'across', '2 rows below', 'as join'.</summary>
internal static class PlaceTails
{
    private static readonly Phrase FromHook = new("from the|your? hook|needle");
    private static readonly Phrase OfTheRow = new("of|in|on|from the? prev|last|row row|rnd|below?");
    private static readonly Phrase Over = new("over the?");
    private static readonly Phrase AsBefore = new("as|where the? last|first|prev?");
    private static readonly Phrase AsJoining = new("join|attach|sl|work|before|make st?");
    private static readonly Phrase RowsBelow = new("row|rnd below");
    private static readonly Phrase RowBelow = new("one|in|on|of? the? row|rnd? below");
    private static readonly Phrase OfRowNumber = new("of|in|from row|rnd");
    private static readonly Phrase InNthRow = new("of|in|from the?");
    private static readonly Phrase RowWord = new("row|rnd");
    private static readonly Phrase StartsAnother = new("with|in|over|on ch|back|front|blo|flo|both|color");
    private static readonly Phrase JustMade = new("just make|work");
    private static readonly Phrase Beside = new("between|before|after|behind|beside the? next|last|first|each?");
    private static readonly Phrase AndBeside = new("and the? next|last|first?");

    public static Placement Take(Cursor cursor, Placement place)
    {
        if (cursor.Take(FromHook)) return FromHookOf(place);
        if (cursor.Take(JustMade)) return place with { Choice = PlaceChoice.JustMade };
        if (cursor.Now.IsWord("make") && (cursor.Ahead(1).Kind == TokenKind.End || Cursor.IsSeparator(cursor.Ahead(1).Kind)) && cursor.TakeWord("make")) return place with { Choice = PlaceChoice.JustMade };
        place = TakeRowNumber(cursor, PlacesWithin.Take(cursor, place));
        TakeAsBefore(cursor, place);
        place = TakeBeside(cursor, place);
        place = TakeRowsBelow(cursor, place);
        cursor.Take(OfTheRow);
        if (place.Kind.Noun is PlaceNoun.Space or PlaceNoun.ChainSpace) TakeWhatItCovers(cursor);
        place = TakeExtent(cursor, place);
        return place.Choice == PlaceChoice.Between || cursor.Is(StartsAnother) ? place : place with { Further = FurtherWords.Take(cursor) ?? place.Further };
    }

    private static Placement FromHookOf(Placement place) => place with
    {
        Choice = PlaceChoice.FromHook,
        Ordinal = place.Ordinal ?? 1,
        Kind = place.Kind.Noun == PlaceNoun.AnyStitch ? PlaceKind.Chain : place.Kind,
    };

    private static Placement TakeRowNumber(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (cursor.Take(OfRowNumber) && Numbers.TakePlain(cursor) is { } row) return place with { InRow = row };
        cursor.At = from;
        if (cursor.Take(InNthRow) && Numbers.TakeOrdinal(cursor) is { } nth && cursor.Take(RowWord)) return place with { InRow = nth };
        cursor.At = from;
        return place;
    }

    /// <summary>'same st as join', 'same sp as last dc'.</summary>
    private static void TakeAsBefore(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (place.Choice != PlaceChoice.Same || !cursor.Take(AsBefore)) return;
        if (cursor.Take(AsJoining)) return;
        Numbers.TakePlain(cursor);
        if (PlaceNouns.Take(cursor) is null) cursor.At = from;
    }

    /// <summary>'next ch-1 loop over the dc of previous row': the stitch that the loop lies over.</summary>
    private static void TakeWhatItCovers(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(Over) || cursor.TakeStitch() is null || !cursor.Take(OfTheRow)) cursor.At = from;
    }

    /// <summary>'sp between 3-dc groups', 'sp before next 3-dc group': which space it is. 'Each sp between sts' is no chain space, but the gap.</summary>
    private static Placement TakeBeside(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (place.Kind.Noun is not (PlaceNoun.Space or PlaceNoun.ChainSpace) || !cursor.Take(Beside)) return place;
        bool between = cursor.Context.Tokens[from].IsWord("between");
        PlaceKind? named = PlaceNouns.Take(cursor);
        bool several = named is null && Numbers.TakePlain(cursor) is not null;
        if ((named ?? PlaceNouns.Take(cursor)) is not { } beside)
        {
            cursor.At = from;
            return place;
        }
        int after = cursor.At;
        bool and = cursor.Take(AndBeside) && PlaceNouns.Take(cursor) is not null;
        if (!and) cursor.At = after;
        // 'center of space between picots': parted by stitches, not by a chain.
        if (between && !several && place.Choice is PlaceChoice.Centre or PlaceChoice.Next && place.Kind.Noun == PlaceNoun.Space && beside.Stitch?.Value == "picot") return place with { Choice = PlaceChoice.Between, Kind = beside, Within = null };
        // 'each sp between clusters': the clusters of a granny are groups of plain stitches.
        if (beside.Stitch?.Value is "cl" or "cluster") return place;
        return between && !and && !several && place.Kind.Noun == PlaceNoun.Space && place.Choice != PlaceChoice.Centre && beside.Stitch?.Value != "picot" && beside.Noun is PlaceNoun.AnyStitch or PlaceNoun.Stitch ? place with { Kind = new PlaceKind(PlaceNoun.Gap) } : place;
    }

    private static Placement TakeRowsBelow(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (Numbers.TakePlain(cursor) is { } rows && cursor.Take(RowsBelow)) return place with { RowsBelow = Math.Max(0, rows - 1) };
        cursor.At = from;
        cursor.Take(RowBelow);
        return place;
    }

    private static Placement TakeExtent(Cursor cursor, Placement place)
    {
        if (place.Choice is PlaceChoice.RowEnds or PlaceChoice.OtherSide) return place with { Extent = Extents.Take(cursor) };
        if (place.Choice is not PlaceChoice.Each || place.Count is not null) return place;
        int from = cursor.At;
        if (Extents.Take(cursor) is { Kind: not ExtentKind.Times } extent) return place with { Extent = extent };
        cursor.At = from;
        return place;
    }
}
