using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads 'skip next 2 sts', 'sk ch-1 sp', 'miss 1 tr', 'sk first dc and ch-1 sp'.</summary>
internal static class SkipSteps
{
    private static readonly Phrase Skip = new("skip over?");
    private static readonly Phrase UnderThem = new("under|beneath it|them|these|the latter|last|ch?");
    private static readonly Phrase Choice = new("the? next|first|last?");
    private static readonly Phrase And = new("and the? next?");
    private static readonly Phrase Behind = new("behind|under|in front? of? the?");
    private static readonly Phrase JustMade = new("just? make|work");
    private static readonly Phrase OfRow = new("of row|rnd #");
    private static readonly Phrase OfChain = new("of the? foundation? ch");
    private static readonly Phrase OfTurningChain = new("of|on|in the? turn|beg|starting #? ch");
    private static readonly Phrase AtBase = new("at|in? the? base|foot|bottom of the? turn|beg|first|#? ch|tch");
    private static readonly Phrase Unworked = new("unworked|free|remaining");
    private static readonly Phrase Tail = new("of|in|on|under|at the? ch|foundation|base|prev|last row|rnd|ch?");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (!cursor.Take(Skip)) return false;
        if (TakeOne(cursor, from) is not { } first) return false;
        steps.Add(first);
        while (TakeAnother(cursor) is { } another) steps.Add(another);
        return true;
    }

    /// <summary>'behind FPdc just made', 'of Row 25 of Front'.</summary>
    private static bool TakeMade(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Behind) && PlaceNouns.Take(cursor) is not null && cursor.Take(JustMade)) return true;
        cursor.At = from;
        if (cursor.Take(OfRow))
        {
            Clauses.TakeToComma(cursor);
            return true;
        }
        return false;
    }

    private static SkipStep? TakeAnother(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(And) && TakeOne(cursor, from) is { } step) return step;
        cursor.At = from;
        return null;
    }

    private static SkipStep? TakeOne(Cursor cursor, int from)
    {
        cursor.Take(UnderThem);
        cursor.Take(Choice);
        // 'skip a chain'
        if (cursor.Now is { Word: "a" or "an" }) cursor.At++;
        int number = cursor.At;
        SizedNumber? count = Numbers.Take(cursor);
        cursor.Take(Unworked);
        PlaceKind? kind = PlaceNouns.Take(cursor);
        // 'skip next 3 ch loop' is one loop of three chains, 'skip next 3 ch loops' are three loops.
        bool oneLoop = kind is { Noun: PlaceNoun.ChainSpace, Chains: null } && cursor.At == number + 3 && !cursor.Slice(cursor.At - 1, cursor.At).EndsWith('s');
        if (count is not null && (kind is null || kind.Noun == PlaceNoun.Chain || oneLoop && count.IsPlain && count.Values[0] > 1))
        {
            int after = cursor.At;
            cursor.At = number;
            if (PlaceNouns.Take(cursor) is { Noun: PlaceNoun.ChainSpace } space) (count, kind) = (null, space);
            else cursor.At = after;
        }
        if (count is null && kind is null && cursor.At > from + 1 && cursor.Ahead(-1) is { Word: "first" } or { Kind: TokenKind.Ordinal } && cursor.Take(OfChain)) kind = PlaceKind.Chain;
        if (count is null && kind is null) return null;
        if (!TakeMade(cursor) && !cursor.Take(AtBase) && !(kind == PlaceKind.Chain && cursor.Take(OfTurningChain)) && !cursor.Take(Tail)) FurtherWords.Take(cursor);
        return new SkipStep(count ?? SizedNumber.Of(1, new TextSpan(cursor.SpanFrom(from).End, 0)), kind ?? PlaceKind.AnyStitch, cursor.SpanFrom(from));
    }
}
