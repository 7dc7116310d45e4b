using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads the thing that a place is part of: 'of next shell', 'of beg ch-3', 'of each V-st', 'of First Motif'.</summary>
internal static class PlacesWithin
{
    private static readonly Phrase Of = new("of|on the?");
    private static readonly Phrase Choice = new("next|each|same|first|last|prev|this|that|a|beg");
    private static readonly Phrase OtherPiece = new("first|second|2nd|3rd|4th|other|prev|last|next|adjacent|corresponding|any? motif|square|piece|front|back|hexagon");
    /// <summary>'2nd of skipped chs': those that turned to the first row.</summary>
    private static readonly Phrase SkippedChains = new("beg? #? skip|unworked beg? #? ch");
    private static readonly Phrase RowWord = new("prev|last? row|rnd");

    public static Placement Take(Cursor cursor, Placement place)
    {
        int from = cursor.At;
        if (!cursor.Take(Of) || cursor.Is(RowWord))
        {
            cursor.At = from;
            return place;
        }
        if (TakeOtherPiece(cursor)) return place with { Choice = PlaceChoice.OtherPiece };
        int choice = cursor.At;
        bool each = cursor.Now.IsWord("each");
        PlaceKind? within = TakeNoun(cursor, choice, out int? number);
        if (within is null)
        {
            cursor.At = from;
            return place;
        }
        // 'between the sc of next 2 petals': between the petals.
        if (place.Choice == PlaceChoice.Between && number > 1) return place with { Kind = within, Count = SizedNumber.Of(number.Value) };
        return Inside(place, within, each);
    }

    private static bool TakeOtherPiece(Cursor cursor)
    {
        int from = cursor.At;
        Numbers.TakeOrdinal(cursor);
        if (cursor.Take(OtherPiece) && cursor.Ahead(-1).Word is "motif" or "square" or "piece" or "front" or "back" or "hexagon") return true;
        cursor.At = from;
        return false;
    }

    private static PlaceKind? TakeNoun(Cursor cursor, int choice, out int? number)
    {
        number = null;
        if (cursor.Take(SkippedChains)) return PlaceKind.TurningChain;
        if (PlaceNouns.Take(cursor) is { } direct) return direct;
        cursor.At = choice;
        while (cursor.Take(Choice)) { }
        if (PlaceNouns.Take(cursor) is { } whole) return whole; // also '5-dc group', whose number is no number of places
        number = Numbers.TakePlain(cursor);
        return PlaceNouns.Take(cursor);
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
}
