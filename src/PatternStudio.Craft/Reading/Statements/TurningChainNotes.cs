using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Statements;

/// <summary>Reads what a pattern says of its turning chains as a whole: 'Ch 3 at beg of row counts as dc throughout', 'Turning chains do not count as stitches.'</summary>
internal static class TurningChainNotes
{

    /// <summary>The notes in a stretch, one for each sentence or part that says so.</summary>
    /// <param name="alone">True where the stretch is no note by label: then each sentence must say nothing else.</param>
    public static List<Statement> In(Cursor cursor, bool alone)
    {
        var notes = new List<Statement>();
        int from = cursor.At;
        for (int i = cursor.At; i <= cursor.End; i++)
        {
            if (i < cursor.End && cursor.Context.Tokens[i].Kind is not (TokenKind.Dot or TokenKind.Semicolon)) continue;
            if (alone && i > from && InstructsToo(new Cursor(cursor.Context, from, i))) return [];
            if (i > from && Sentence(new Cursor(cursor.Context, from, i)) is { } note) notes.Add(note);
            else if (alone && i > from && notes.Count == 0 && !IsTermsSentence(cursor, from, i)) return [];
            from = i + 1;
        }
        return notes;
    }

    private static bool IsTermsSentence(Cursor cursor, int from, int to)
    {
        for (int i = from; i < to; i++)
            if (cursor.Context.Tokens[i].Word is "terms" or "terminology") return true;
        return false;
    }

    /// <summary>The subject names the chains, then the words say whether they count.</summary>
    private static Statement? Sentence(Cursor cursor)
    {
        int count = IndexOf(cursor, token => token.IsWord("count"));
        if (count < 0 || !NamesChains(cursor, count) || IsFoundation(cursor)) return null;
        bool counts = IndexOf(cursor, token => token.Kind == TokenKind.Word && token.Word is "not" or "don't" or "doesn't" or "never" or "isn't") is var not && (not < 0 || not > count);
        cursor.At = count + 1;
        while (!cursor.AtEnd && cursor.Now.Word is "as" or "the" or "first" or "a" or "an" or "one" or "1" or "for" || cursor.Kind == TokenKind.Number) cursor.At++;
        StitchId? stitch = counts ? cursor.TakeStitch() : null;
        TextSpan span = cursor.Span(cursor.Start, cursor.End);
        return new Statement(StatementKind.TurningChain, cursor.Context.Source.Slice(span), span) { TurningChain = (ChainsOf(cursor, count), counts), CountsAs = stitch };
    }

    /// <summary>'Magic ring, ch 3 (counts as dc), 13 dc in ring': said in brackets on the way, with stitches behind them.</summary>
    private static bool InstructsToo(Cursor cursor)
    {
        bool inBrackets = false;
        for (; !cursor.AtEnd; cursor.At++)
        {
            if (cursor.Partner() is >= 0 and int partner)
            {
                for (int i = cursor.At; i < partner; i++) inBrackets |= cursor.Context.Tokens[i].IsWord("count");
                cursor.At = partner;
            }
            else if (inBrackets && cursor.TakeStitch() is not null) return true;
        }
        return false;
    }

    /// <summary>'Ch 21 (first 3 chs count as dc)': a chain to work into, whatever is said of it.</summary>
    private static bool IsFoundation(Cursor cursor)
    {
        const int LongestTurning = 6;
        return cursor.Context.Tokens[cursor.Start].IsWord("ch") && cursor.Start + 2 < cursor.End && cursor.Context.Tokens[cursor.Start + 1] is { Kind: TokenKind.Number, Value: > LongestTurning };
    }

    private static int IndexOf(Cursor cursor, Predicate<Token> wanted)
    {
        for (int i = cursor.Start; i < cursor.End; i++)
            if (wanted(cursor.Context.Tokens[i])) return i;
        return -1;
    }

    private static bool NamesChains(Cursor cursor, int before)
    {
        for (int i = cursor.Start; i < before; i++)
            if (cursor.Context.Tokens[i].Word is "ch" or "tch") return true;
        return false;
    }

    /// <summary>The 3 of 'ch-3', 'ch 3' or '3 ch'; 0 where none is named.</summary>
    private static int ChainsOf(Cursor cursor, int before)
    {
        for (int i = cursor.Start; i < before; i++)
        {
            if (cursor.Context.Tokens[i].Word is not "ch") continue;
            for (int next = i + 1; next <= Math.Min(i + 2, before); next++)
                if (cursor.Context.Tokens[next].Kind == TokenKind.Number) return Math.Min(cursor.Context.Tokens[next].Value, ReadingLimits.Number);
            if (i > cursor.Start && cursor.Context.Tokens[i - 1] is { Kind: TokenKind.Number } number) return Math.Min(number.Value, ReadingLimits.Number);
        }
        return 0;
    }
}
