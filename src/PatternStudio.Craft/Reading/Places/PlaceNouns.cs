using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Places;

/// <summary>Reads the noun of a place: 'st', 'ch-2 sp', 'dc', 'shell', 'tch', 'ring'.</summary>
internal static class PlaceNouns
{
    private static readonly Phrase Corner = new("corner sp|loop|st|mesh?");
    private static readonly Phrase ShortTurningChain = new("t ch");
    private static readonly Phrase BeginningChain = new("the? turn|beg ch");
    private static readonly Phrase NumberedBeginning = new("the? turn|beg # ch");
    private static readonly Phrase Ring = new("the? magic|center|adjustable|sliding? ring|mr");
    private static readonly Phrase MagicLoop = new("the? magic|adjustable|sliding|slip ring|loop|knot");
    private static readonly Phrase SpaceWord = new("sp|loop|mesh|arch|lp");
    private static readonly Phrase ChainWord = new("foundation|base? ch st?");
    private static readonly Phrase StitchOfChain = new("st of foundation|base|beg|end? ch");
    private static readonly Phrase StitchWord = new("st");
    private static readonly Phrase OrSpace = new("and|or in? each? ch? sp|loop");
    private static readonly Phrase OrNumberedSpace = new("and|or ch # sp|loop");
    private static readonly Phrase OrChain = new("and|or in? each? ch");
    private static readonly Phrase RowEnd = new("row end|st?");
    private static readonly Phrase EndOfRow = new("end of each|next? row");
    private static readonly Phrase Adjective = new("free|large|small|empty|long|short|joining|join|unworked|single|big|little|solid|open|hemstitched|raised|chain|foundation|outer|inner|outside|inside|starting|extra");
    private static readonly Phrase ClusterWord = new("cl|cluster st?");
    private static readonly Phrase GroupWord = new("group|groups");
    private static readonly Phrase PlaceWord = new("place|one");

    /// <summary>Takes a noun; null where none stands here.</summary>
    public static PlaceKind? Take(Cursor cursor)
    {
        int from = cursor.At;
        if (TakeNoun(cursor) is { } noun) return noun;
        cursor.At = from;
        if (TakeAdjectives(cursor) && TakeNoun(cursor) is { } described) return described;
        cursor.At = from;
        return null;
    }

    /// <summary>'free picot', 'large motif', 'Green petal': which of them it is, the row's order says.</summary>
    private static bool TakeAdjectives(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.At - from < 3 && (cursor.Take(Adjective) || IsColour(cursor) && cursor.Take(TokenKind.Word))) { }
        return cursor.At > from;
    }

    private static bool IsColour(Cursor cursor) =>
        cursor.Kind == TokenKind.Word && char.IsUpper(cursor.Raw[0]) && cursor.Ahead(1).Kind == TokenKind.Word && cursor.At > cursor.Start;

    private static PlaceKind? TakeNoun(Cursor cursor)
    {
        if (TakeLongName(cursor) is { } named) return named;
        if (cursor.Take(Corner))
        {
            TakeChainSpace(cursor);
            return new PlaceKind(PlaceNoun.Corner);
        }
        if (TakeTurningChain(cursor) is { } turning) return turning;
        if (TakeChainSpace(cursor) is { } space) return space;
        if (cursor.Take(Ring) || cursor.Take(MagicLoop) || cursor.Now.IsWord("mc") && cursor.Context.McIsRing && cursor.TakeWord("mc")) return PlaceKind.Ring;
        if (cursor.Take(StitchOfChain))
        {
            if (cursor.Kind == TokenKind.Number && !cursor.Ahead(1).IsWord("times")) cursor.At++;
            return PlaceKind.Chain;
        }
        if (cursor.Take(SpaceWord)) return PlaceKind.Space;
        if (cursor.Is(ChainWord)) return TakeWithChoice(cursor, ChainWord, PlaceKind.Chain);
        if (cursor.Is(StitchWord)) return TakeWithChoice(cursor, StitchWord, PlaceKind.AnyStitch);
        if (cursor.Take(EndOfRow) || cursor.Take(RowEnd)) return new PlaceKind(PlaceNoun.RowEnd);
        if (cursor.Take(PlaceWord)) return PlaceKind.AnyStitch;
        return TakeStitch(cursor);
    }

    private static PlaceKind? TakeStitch(Cursor cursor)
    {
        if (TakeStitchGroup(cursor) is { } stitchGroup) return stitchGroup;
        bool each = cursor.Ahead(-1).IsWord("each");
        if (cursor.TakeStitch() is not { } stitch) return TakeKnownGroup(cursor);
        if (cursor.Take(ClusterWord)) return PlaceKind.AnyStitch;
        cursor.Take(StitchWord);
        cursor.Take(GroupWord);
        if (each && TakeOrOther(cursor) is { } both) return both;
        return cursor.Context.IsGroup(stitch) ? new PlaceKind(PlaceNoun.Group, stitch) : PlaceKind.Of(stitch);
    }

    /// <summary>'3-dc group', '5-dc shell', '3-sc corner'.</summary>
    private static PlaceKind? TakeStitchGroup(Cursor cursor)
    {
        int from = cursor.At;
        if (Numbers.TakePlain(cursor) is not null && cursor.Take(TokenKind.Hyphen) && cursor.TakeStitch() is { } stitch && stitch != StitchId.Chain)
        {
            if (cursor.Take(Corner)) return new PlaceKind(PlaceNoun.Corner);
            if (TakeKnownGroup(cursor) is { } group) return group;
            if (cursor.TakeStitch() is { } name && cursor.Context.IsGroup(name)) return new PlaceKind(PlaceNoun.Group, name);
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'tile', 'petal': names of groups that need no definition.</summary>
    private static PlaceKind? TakeKnownGroup(Cursor cursor)
    {
        if (cursor.Kind != TokenKind.Word || cursor.Now.Form.Group is not { } name) return null;
        cursor.At++;
        while (cursor.Kind == TokenKind.Word && cursor.Now.Form.Group is { } further)
        {
            name = further == "group" ? name : further;
            cursor.At++;
        }
        return new PlaceKind(PlaceNoun.Group, new StitchId(name));
    }

    /// <summary>Stitches of several words go before their first word: 'loop st' is no loop.</summary>
    private static PlaceKind? TakeLongName(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Now.Word is "loop" or "sp" or "mesh" && TakeStitch(cursor) is { Stitch: { } } kind && cursor.At > from + 1) return kind;
        cursor.At = from;
        return null;
    }

    /// <summary>'st and ch-1 sp' is one kind of place: whatever comes next.</summary>
    private static PlaceKind TakeWithChoice(Cursor cursor, Phrase noun, PlaceKind kind)
    {
        cursor.Take(noun);
        if (kind != PlaceKind.AnyStitch) return kind;
        int from = cursor.At;
        if (cursor.Take(OrSpace) || cursor.Ahead(-2).IsWord("each") && cursor.Take(OrNumberedSpace)) return new PlaceKind(PlaceNoun.StitchOrSpace);
        if (cursor.Take(OrChain) && !IsNumber(cursor)) return new PlaceKind(PlaceNoun.StitchOrChain);
        cursor.At = from;
        return kind;
    }

    /// <summary>'each hdc and ch around', 'each dc and ch-1 sp': whatever comes next.</summary>
    private static PlaceKind? TakeOrOther(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(OrSpace) || cursor.Take(OrNumberedSpace)) return new PlaceKind(PlaceNoun.StitchOrSpace);
        if (cursor.Take(AndChain) && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind) || Extents.IsSweep(cursor) || cursor.Now.Word is "around" or "across")) return new PlaceKind(PlaceNoun.StitchOrChain);
        cursor.At = from;
        return null;
    }

    private static readonly Phrase AndChain = new("and|or each? ch");

    private static bool IsNumber(Cursor cursor) => cursor.Kind is TokenKind.Hyphen or TokenKind.Number;

    private static PlaceKind? TakeTurningChain(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Now.IsWord("tch")) cursor.At++;
        else if (cursor.Take(ShortTurningChain)) return PlaceKind.TurningChain with { Chains = ChainNumber(cursor) };
        else if (cursor.Take(NumberedBeginning)) return PlaceKind.TurningChain with { Chains = Math.Min(cursor.Ahead(-2).Value, ReadingLimits.Number) };
        else if (!cursor.Take(BeginningChain)) return null;
        int? chains = ChainNumber(cursor);
        if (chains is null && from == cursor.At) return null;
        return PlaceKind.TurningChain with { Chains = chains };
    }

    /// <summary>'-3' of 'ch-3'; also '3' where a space word follows.</summary>
    private static int? ChainNumber(Cursor cursor)
    {
        int from = cursor.At;
        bool hyphen = cursor.Take(TokenKind.Hyphen);
        if (hyphen || cursor.Ahead(1) is { Kind: TokenKind.Word } next && next.Word is "sp" or "loop" or "mesh" or "arch" or "ring")
            if (Numbers.TakePlain(cursor) is { } chains)
                return chains;
        cursor.At = from;
        return null;
    }

    /// <summary>'ch-2 sp', 'ch 5 loop', '5 ch loop', 'ch sp', and 'ch-3' alone.</summary>
    private static PlaceKind? TakeChainSpace(Cursor cursor)
    {
        int from = cursor.At;
        int? before = cursor.Kind == TokenKind.Number ? Numbers.TakePlain(cursor) : null;
        if (before is not null) cursor.Take(TokenKind.Hyphen);
        if (cursor.TakeWord("ch"))
        {
            int? after = before is null ? ChainNumber(cursor) : null;
            cursor.Take(TokenKind.Hyphen);
            if (cursor.Take(SpaceWord) || cursor.Take(Corner)) return PlaceKind.ChainSpace(before ?? after);
            if (after is not null) return PlaceKind.ChainSpace(after);
            if (before is null && cursor.Kind == TokenKind.Number && cursor.Ahead(1).Word is not ("times" or "more" or "ch" or "st" or "dc" or "sc") && Numbers.TakePlain(cursor) is { } chains) return PlaceKind.ChainSpace(chains);
        }
        cursor.At = from;
        return null;
    }
}
