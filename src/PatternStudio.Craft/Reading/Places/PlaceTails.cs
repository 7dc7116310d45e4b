using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads what follows a place and narrows it: 'from hook', 'of next shell', 'across', '2 rows below', 'as join'.</summary>
internal static class PlaceTails
{
    private static readonly Phrase FromHook = new("from the? hook|needle");
    private static readonly Phrase Of = new("of the?");
    private static readonly Phrase Within = new("next|each|same|first|last|this|that|a|beg?");
    private static readonly Phrase OfTheRow = new("of|in|on the? prev|last|first|row row|rnd|below?");
    private static readonly Phrase AsBefore = new("as|where the? last|first|prev?");
    private static readonly Phrase AsJoining = new("join|attach|sl|work|before|made st?");
    private static readonly Phrase RowsBelow = new("# row|rnd below");
    private static readonly Phrase RowBelow = new("one|in|on|of? the? row|rnd? below");

    public static Placement Take(Cursor cursor, Placement place)
    {
        if (cursor.Take(FromHook)) return FromHookOf(place);
        place = TakeWithin(cursor, place);
        TakeAsBefore(cursor, place);
        place = TakeRowsBelow(cursor, place);
        cursor.Take(OfTheRow);
        return TakeExtent(cursor, place);
    }

    private static Placement FromHookOf(Placement place) => place with
    {
        Choice = PlaceChoice.FromHook,
        Ordinal = place.Ordinal ?? 1,
        Kind = place.Kind.Noun == PlaceNoun.AnyStitch ? PlaceKind.Chain : place.Kind,
    };

    /// <summary>'of next shell', 'of beg ch-3', 'of each V-st'.</summary>
    private static Placement TakeWithin(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (cursor.Is(OfTheRow) || !cursor.Take(Of)) return place;
        int choice = cursor.At;
        bool each = cursor.Now.IsWord("each");
        if (PlaceNouns.Take(cursor) is not { } within)
        {
            cursor.At = choice;
            cursor.Take(Within);
            if (PlaceNouns.Take(cursor) is not { } after)
            {
                cursor.At = from;
                return place;
            }
            within = after;
        }
        return Inside(place, within, each);
    }

    private static Placement Inside(Placement place, PlaceKind within, bool each)
    {
        bool ofTurningChain = within.Noun == PlaceNoun.TurningChain
            || (place.Ordinal is not null && place.Kind.Noun is PlaceNoun.Chain or PlaceNoun.AnyStitch && within.Noun == PlaceNoun.Chain);
        if (ofTurningChain) return place with { Choice = PlaceChoice.TurningChainTop, Within = within, Kind = PlaceKind.Chain };
        if (place.Choice == PlaceChoice.First) return place with { Choice = PlaceChoice.Nth, Ordinal = 1, Within = within };
        if (place.Choice == PlaceChoice.Last) return place with { Choice = PlaceChoice.Nth, Ordinal = -1, Within = within };
        return place with { Choice = each ? PlaceChoice.Each : place.Choice, Within = within };
    }

    private static void TakeAsBefore(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (place.Choice != PlaceChoice.Same || !cursor.Take(AsBefore)) return;
        if (!cursor.Take(AsJoining) && PlaceNouns.Take(cursor) is null) cursor.At = from;
    }

    private static Placement TakeRowsBelow(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (Numbers.TakePlain(cursor) is { } rows && cursor.Take(new Phrase("row|rnd below"))) return place with { RowsBelow = Math.Max(0, rows - 1) };
        cursor.At = from;
        cursor.Take(RowBelow);
        return place;
    }

    private static Placement TakeExtent(Cursor cursor, Placement place)
    {
        if (place.Choice is not PlaceChoice.Each || place.Count is not null)
        {
            if (place.Choice is PlaceChoice.RowEnds or PlaceChoice.OtherSide) return place with { Extent = Extents.Take(cursor) };
            return place;
        }
        int from = cursor.At;
        if (Extents.Take(cursor) is { Kind: not ExtentKind.Times } extent) return place with { Extent = extent };
        cursor.At = from;
        return place;
    }
}
