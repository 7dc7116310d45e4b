using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads places along the edge of the fabric: 'in end of each of next 20 rows', 'evenly down side', 'along the other side of the foundation chain'.</summary>
internal static class RowEndPlaces
{
    private static readonly Phrase EndOfEach = new("evenly? spaced? in|along|across|over|at|on|down|up the? end of each? of? the? next|first|last?");
    private static readonly Phrase RowEndsAlong = new("evenly? spaced? in|along|across|around|down|up|over|on|into the? row end");
    private static readonly Phrase RowWord = new("row|rnd");
    private static readonly Phrase Side = new("evenly? spaced? along|down|up|across|around|on the? other|each|opposite|left|right|long|short|next|first|second|same|of|this|front|back|neck|lower|upper|top|curved|straight|raw? front|back|neck? side|edge|edges");
    private static readonly Phrase EvenlyAround = new("evenly spaced? around|across|down|up the? entire|whole|outside|outer|front|neck? armhole|neckline|opening|neck|brim|cuff|hem|piece|blanket|square|perimeter|scarf|shawl|wrap|cloth|dishcloth|washcloth|afghan|throw|mat|placemat|cowl|bag");
    private static readonly Phrase OtherSide = new("on|in|along|of|across|down|over the? other|opposite|remaining|unused|free|bottom|underside|reverse side|loop|edge? of? the? foundation|beg|base|starting? ch? st?");
    private static readonly Phrase AlongChain = new("along|across|on the? foundation|beg|starting|base ch");
    private static readonly Phrase AlongFoundation = new("along|across the? foundation|bottom edge|row|chain?");
    private static readonly Phrase OfPiece = new("of the? work|brim|band|cuff|body|hat|basket|bag|piece|row|rows|blanket|panel|square|mat|motif|edging|border|lace|strip");

    /// <summary>Takes a place along the edge; null where none stands here.</summary>
    public static Placement? Take(Cursor cursor)
    {
        int from = cursor.At;
        Placement? place = TakeOther(cursor) ?? TakeEnds(cursor, from) ?? TakeSide(cursor);
        if (place is null) cursor.At = from;
        return place is null ? null : place with { Span = cursor.SpanFrom(from) };
    }

    private static Placement? TakeOther(Cursor cursor)
    {
        int from = cursor.At;
        bool other = cursor.Take(OtherSide) && cursor.Ahead(-1).Word is "ch" or "loop" or "st";
        if (!other) cursor.At = from;
        if (other || cursor.Take(AlongChain) || cursor.Take(AlongFoundation))
            return new Placement(PlaceChoice.OtherSide, PlaceKind.Chain, default);
        cursor.At = from;
        return null;
    }

    private static Placement? TakeEnds(Cursor cursor, int from)
    {
        if (cursor.Take(EndOfEach))
        {
            SizedNumber? count = Numbers.Take(cursor);
            if (cursor.Take(RowWord)) return new Placement(PlaceChoice.RowEnds, new PlaceKind(PlaceNoun.RowEnd), default) { Count = count };
        }
        cursor.At = from;
        if (cursor.Take(RowEndsAlong)) return new Placement(PlaceChoice.RowEnds, new PlaceKind(PlaceNoun.RowEnd), default);
        cursor.At = from;
        return null;
    }

    private static Placement? TakeSide(Cursor cursor)
    {
        if (cursor.Take(EvenlyAround)) return new Placement(PlaceChoice.RowEnds, new PlaceKind(PlaceNoun.RowEnd), default);
        if (!cursor.Take(Side) || cursor.Ahead(-1) is not { Word: "side" or "edge" or "edges" }) return null;
        cursor.Take(OfPiece);
        return new Placement(PlaceChoice.RowEnds, new PlaceKind(PlaceNoun.RowEnd), default);
    }
}
