using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>
/// Reads how a row differs from the row it refers to: 'same as last row, ending with ch 4, tr in tr', 'but having 8 chs in each loop'. Words that change it in
/// any other way belong to it, and leave it to the maker.
/// </summary>
internal static class RowChangeWords
{
    private static readonly Phrase Changes = new("but|except|having|with|make|only|omitting|always|work|increasing|decreasing|widening|narrowing|leaving|ending|end|without|the");
    private static readonly Phrase But = new("but|except|and");
    private static readonly Phrase Having = new("having|with|make|work");
    private static readonly Phrase ChainsInEachLoop = new("ch in|for|to each|all|the loop|sp");
    private static readonly Phrase Make = new("make");
    private static readonly Phrase A = new("a|1|one");
    private static readonly Phrase InEach = new("in|over each|the|all");

    /// <summary>The reference with its changes, which stand at the cursor.</summary>
    /// <param name="told">The reference as read so far.</param>
    /// <param name="from">Where its words begin.</param>
    public static AsRowStep Take(Cursor cursor, AsRowStep told, int from)
    {
        int start = cursor.At;
        while (cursor.Kind is TokenKind.Comma or TokenKind.Dash) cursor.At++;
        int words = cursor.At;
        if (TakesColour(cursor)) return told with { Span = cursor.SpanFrom(from) };
        if (TakeAll(cursor, told) is { } changed) return changed with { Span = cursor.SpanFrom(from) };
        cursor.At = words;
        StitchStep? making = cursor.Take(Make) ? StitchSteps.TakeCounted(cursor) : null;
        cursor.At = words;
        bool changes = cursor.Take(Changes);
        if (changes) Clauses.TakeToStop(cursor);
        else cursor.At = start;
        return told with { WithChanges = changes, Making = making, Span = cursor.SpanFrom(from) };
    }

    private static readonly Phrase ChangeColour = new("but|and? change|changing|switch|switching to|color|yarn");
    private static readonly Phrase InColour = new("with|in|using color|yarn");
    private static readonly Phrase With = new("with|in|using");

    /// <summary>', but change to colour B in the last st', 'with B', 'in colour C': the yarn is another, the stitches are the same.</summary>
    private static bool TakesColour(Cursor cursor)
    {
        int from = cursor.At;
        bool letter = cursor.Is(With) && cursor.Ahead(1) is { Kind: TokenKind.Word, Span.Length: <= 2 } && (cursor.Ahead(2).Kind == TokenKind.End || Cursor.IsSeparator(cursor.Ahead(2).Kind));
        if (letter) letter = cursor.Context.Source.Slice(cursor.Ahead(1).Span).All(char.IsAsciiLetterUpper);
        if (!letter && !cursor.Take(ChangeColour) && !cursor.Take(InColour)) return false;
        Steps.Clauses.TakeToComma(cursor);
        if (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) && cursor.Kind != TokenKind.Comma || cursor.Kind == TokenKind.Open) return true;
        cursor.At = from;
        return false;
    }

    private static AsRowStep? TakeAll(Cursor cursor, AsRowStep told)
    {
        AsRowStep changed = told;
        while (true)
        {
            cursor.Take(TokenKind.Comma);
            cursor.Take(But);
            if (TakeLoopChains(cursor) is { } chains) changed = changed with { LoopChains = chains };
            else if (TakeLoopsBelow(cursor) is { } below) changed = changed with { LoopsBelow = below };
            else break;
        }
        if (RepeatEndings.TakeClosing(cursor) is { IsEmpty: false } ending) changed = changed with { Ending = ending };
        bool whole = cursor.AtEnd || Cursor.IsSeparator(cursor.Kind);
        return whole && !changed.IsUnchanged ? changed : null;
    }

    /// <summary>'having 8 chs in each loop'.</summary>
    private static SizedNumber? TakeLoopChains(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Having) && Numbers.Take(cursor) is { } chains && cursor.Take(ChainsInEachLoop)) return chains;
        cursor.At = from;
        return null;
    }

    /// <summary>'working a shell in each ch-8 loop': only the loops are others.</summary>
    private static int? TakeLoopsBelow(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Having) && cursor.Take(A) && (cursor.TakeStitch() is not null || PlaceNouns.Take(cursor) is not null) && cursor.Take(InEach)
            && PlaceNouns.Take(cursor) is { Noun: PlaceNoun.ChainSpace, Chains: { } chains }) return chains;
        cursor.At = from;
        return null;
    }
}
