using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads where the hook goes: 'in next ch-2 sp', 'in each of next 3 dc', 'over next 2 sts', 'in 2nd ch from hook'.</summary>
internal static class Placements
{
    private static readonly Phrase Preposition = new("in|on|under|at|around|through|to|onto|up");
    /// <summary>'rtrf round next 4 sts': British for 'around'.</summary>
    private static readonly Phrase RoundIt = new("rnd the? next|each|same|first|last|2|3|4");
    private static readonly Phrase WithoutPreposition = new("each|next|same");
    private static readonly Phrase NthFromHook = new("##|second|third|fourth|fifth ch st? from the|your? hook");
    private static readonly Phrase RowsBelow = new("# row|rnd below");
    private static readonly Phrase TopOf = new("the? top of");
    private static readonly Phrase And = new("and then? also?");

    /// <summary>Takes a placement with all that the same words add; null where none stands here.</summary>
    public static Placement? Take(Cursor cursor) => cursor.Context.Places.Read(cursor, Read);

    private static Placement? Read(Cursor cursor)
    {
        int from = cursor.At;
        Placement? placement = TakeOne(cursor, needsPreposition: true);
        if (placement is null)
        {
            cursor.At = from;
            return null;
        }
        return TakeMore(cursor, from, placement);
    }

    /// <summary>Takes a place named without 'in': 'the same ch as the first sc'.</summary>
    public static Placement? TakeBare(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TopOf);
        if (cursor.Kind == TokenKind.Number || TakeOne(cursor, needsPreposition: false) is not { } placement)
        {
            cursor.At = from;
            return null;
        }
        return placement;
    }

    /// <summary>'in 2nd ch from hook and in each ch across', 'in each dc and in each ch-1 sp across'.</summary>
    private static Placement TakeMore(Cursor cursor, int from, Placement first)
    {
        int after = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (cursor.Take(And) && TakeSweep(cursor) is { } rest) return first with { And = rest };
        cursor.At = after;
        cursor.Take(TokenKind.Comma);
        if (cursor.Take(And) && (cursor.Is(Preposition) || cursor.Is(WithoutPreposition) || cursor.Now.IsWord("corner") || first.Choice == PlaceChoice.Over)
            && TakeOne(cursor, needsPreposition: false) is { } second
            && !StartsStitch(cursor))
        {
            second = TakeMore(cursor, cursor.At, second);
            return EachOfBoth(first, second, cursor.SpanFrom(from)) ?? first with { And = second };
        }
        cursor.At = after;
        return first;
    }

    /// <summary>'in 2nd ch from hook and across', '… and to end of row': one in each of the rest.</summary>
    private static Placement? TakeSweep(Cursor cursor)
    {
        int from = cursor.At;
        if (Extents.Take(cursor) is { Kind: ExtentKind.ToEnd or ExtentKind.ToLast } extent && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) || cursor.Kind is TokenKind.Open or TokenKind.Close))
            return new Placement(PlaceChoice.Each, PlaceKind.AnyStitch, cursor.SpanFrom(from)) { Extent = extent };
        cursor.At = from;
        return null;
    }

    private static bool StartsStitch(Cursor cursor) => cursor.Now.IsWord("work");

    /// <summary>'each dc and each ch-1 sp across' takes whatever comes next: one 'each', not two one after the other.</summary>
    private static Placement? EachOfBoth(Placement first, Placement second, TextSpan span)
    {
        if (first is not { Choice: PlaceChoice.Each, Extent: null, Count: null } || second is not { Choice: PlaceChoice.Each, Count: null }) return null;
        PlaceNoun noun = second.Kind.Noun is PlaceNoun.Chain ? PlaceNoun.StitchOrChain
            : second.Kind.Noun is PlaceNoun.ChainSpace or PlaceNoun.Space || first.Kind.Noun is PlaceNoun.ChainSpace or PlaceNoun.Space ? PlaceNoun.StitchOrSpace
            : PlaceNoun.AnyStitch;
        return second with { Kind = new PlaceKind(noun), Span = span };
    }

    private static Placement? TakeOne(Cursor cursor, bool needsPreposition)
    {
        int from = cursor.At;
        if (Extents.IsSweep(cursor)) return null;
        (LoopChoice loop, PostChoice post) = LoopsAndPosts.TakeBefore(cursor);
        bool said = cursor.At > from;
        IReadOnlyList<int> ordinals = [];
        // 'sc blo to end', 'hdc in BLO around': in each of them.
        Placement? placement = (loop != LoopChoice.Both ? TakeSweep(cursor) : null) ?? SpecialPlaces.Take(cursor);
        if (placement is null)
        {
            if (cursor.Take(Preposition) || cursor.Is(RoundIt) && cursor.TakeWord("rnd")) said = true;
            if (loop == LoopChoice.Both && post == PostChoice.None) (loop, post) = LoopsAndPosts.TakeBefore(cursor);
            if (needsPreposition && !said && !cursor.Is(WithoutPreposition) && !cursor.Is(NthFromHook)) return null;
            ordinals = SeveralOrdinals.Take(cursor);
            // 'dc in FLO 2 rows below': a stitch there, not two of something.
            if (loop == LoopChoice.Both || !cursor.Is(RowsBelow)) placement = Determined.Take(cursor);
        }
        if (placement is null && loop != LoopChoice.Both && said) placement = new Placement(PlaceChoice.Next, PlaceKind.AnyStitch, cursor.SpanFrom(from));
        if (placement is null) return null;
        placement = PlaceTails.Take(cursor, placement);
        if (loop == LoopChoice.Both) loop = LoopsAndPosts.TakeAfter(cursor);
        return SeveralOrdinals.Spread(placement with { Loop = loop, Post = post, Span = cursor.SpanFrom(from) }, ordinals);
    }
}
