namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>The brackets of a size list: '(31, 41)' in '21 (31, 41)', '[31: 41]' as magazines in Britain set them.</summary>
internal static class SizeList
{
    private const int MostSizes = 50;

    /// <summary>
    /// True where brackets that hold numbers and dashes only stand at the cursor (plus <paramref name="by"/> tokens). One number alone,
    /// '20 (22)', is a size list only in a pattern of two sizes or in a chain of brackets: else it is a count or a remark.
    /// </summary>
    public static bool IsAt(Cursor cursor, int by)
    {
        int open = cursor.At + by;
        if (cursor.Ahead(by).Kind != TokenKind.Open) return false;
        int close = cursor.Context.Partners[open];
        if (close < 0 || close >= cursor.End || close == open + 1) return false;
        int numbers = 0;
        for (int i = open + 1; i < close; i++)
        {
            TokenKind kind = cursor.Context.Tokens[i].Kind;
            // '[6–7]' is from 6 to 7: a dash alone is a size that does not work it.
            if (kind is TokenKind.Dash or TokenKind.Hyphen && cursor.Context.Tokens[i - 1].Kind == TokenKind.Number && cursor.Context.Tokens[i + 1].Kind == TokenKind.Number) return false;
            if (kind is TokenKind.Number or TokenKind.Dash or TokenKind.Hyphen) numbers++;
            else if (kind is not (TokenKind.Comma or TokenKind.Slash or TokenKind.Colon or TokenKind.Semicolon)) return false;
        }
        return numbers > 1 || (numbers == 1 && (cursor.Context.Sizes == 2 || cursor.Context.OnlySizes.Count == 2 || IsInChain(cursor, open, close)));
    }

    /// <summary>'21 (31) (41)': the brackets beside hold a number as well.</summary>
    private static bool IsInChain(Cursor cursor, int open, int close)
    {
        Token[] tokens = cursor.Context.Tokens;
        bool after = close + 2 < cursor.End && tokens[close + 1].Kind == TokenKind.Open && tokens[close + 2].Kind is TokenKind.Number or TokenKind.Dash && tokens[open - 1].Kind is TokenKind.Number or TokenKind.Close;
        return after || (open >= 3 && tokens[open - 1].Kind == TokenKind.Close && tokens[open - 2].Kind is TokenKind.Number or TokenKind.Dash);
    }

    /// <summary>Takes the brackets and adds their numbers.</summary>
    public static void Take(Cursor cursor, List<int?> values)
    {
        int close = cursor.Context.Partners[cursor.At];
        for (int i = cursor.At + 1; i < close; i++)
        {
            Token token = cursor.Context.Tokens[i];
            if (token.Kind == TokenKind.Number) values.Add(Math.Min(token.Value, ReadingLimits.Number));
            else if (token.Kind is TokenKind.Dash or TokenKind.Hyphen) values.Add(null);
        }
        cursor.At = close + 1;
    }

    /// <summary>The length of the longest size list in a text; 1 where there is none. Two sizes show in '21 (25) ch' said more than once.</summary>
    public static int LongestIn(ReadingContext context)
    {
        int longest = TwoSizes(context) ? 2 : 1;
        var cursor = new Cursor(context, 0, context.Tokens.Length);
        for (int i = 0; i < context.Tokens.Length; i++)
        {
            if (context.Tokens[i].Kind != TokenKind.Number) continue;
            cursor.At = i + 1;
            if (!IsAt(cursor, 0)) continue;
            var values = new List<int?> { 0 };
            while (IsAt(cursor, 0) && values.Count < MostSizes) Take(cursor, values);
            longest = Math.Max(longest, values.Count);
        }
        return longest;
    }

    /// <summary>True where a number with as many more in brackets as the text has sizes stands in the stretch, none of them a dash.</summary>
    public static bool CoversAll(Cursor stretch)
    {
        for (int i = stretch.Start; i < stretch.End; i++)
        {
            if (stretch.Context.Tokens[i].Kind != TokenKind.Number) continue;
            stretch.At = i + 1;
            if (!IsAt(stretch, 0)) continue;
            var values = new List<int?> { 0 };
            while (IsAt(stretch, 0) && values.Count < MostSizes) Take(stretch, values);
            if (values.Count == stretch.Context.Sizes && !values.Contains(null)) return true;
        }
        return false;
    }

    private static bool TwoSizes(ReadingContext context)
    {
        Token[] tokens = context.Tokens;
        int said = Says(context) ? 2 : 0;
        for (int i = 0; i + 4 < tokens.Length && said < 2; i++)
        {
            if (tokens[i].Kind == TokenKind.Number && tokens[i + 1].Kind == TokenKind.Open && tokens[i + 2].Kind == TokenKind.Number && tokens[i + 3].Kind == TokenKind.Close
                && tokens[i + 4] is { Kind: TokenKind.Word, StartsLine: false } next && next.Word is "ch" or "st" or "row" or "rnd" or "times" or "more" or "sc" or "dc" or "hdc" or "tr" or "htr"
                && tokens[i + 2].Value > tokens[i].Value)
                said++;
        }
        return said == 2;
    }

    /// <summary>'Sizes: Small (Large)'.</summary>
    private static bool Says(ReadingContext context)
    {
        if (Statements.SizeNamesFinder.NamesTwo(context.Source.Content)) return true;
        Token[] tokens = context.Tokens;
        for (int i = 0; i + 5 < tokens.Length; i++)
            if (tokens[i].Word is "size" or "sizes" && tokens[i + 1].Kind == TokenKind.Colon && tokens[i + 2].Kind == TokenKind.Word && tokens[i + 3].Kind == TokenKind.Open && tokens[i + 4].Kind == TokenKind.Word && tokens[i + 5].Kind == TokenKind.Close) return true;
        return false;
    }
}
