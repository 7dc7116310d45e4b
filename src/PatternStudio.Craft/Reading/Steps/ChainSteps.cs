using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Reads chains: 'ch 3', 'Chain 21 (31, 41)', '5 ch', 'make a chain of 20 stitches', 'ch 1, turn'.</summary>
internal static class ChainSteps
{
    private static readonly Phrase Verb = new("work|make|crochet|cast on? a? the? foundation?");
    private static readonly Phrase Beginning = new("loosely|beg by|with? a?");
    private static readonly Phrase ChainOf = new("ch of");
    private static readonly Phrase ChainWord = new("ch");
    private static readonly Phrase Stitches = new("ch? st");
    private static readonly Phrase Stitch = new("st");
    private static readonly Phrase Loosely = new("loosely|more");
    private static readonly Phrase ToTurn = new("to|and turn the|your|my? work|piece|project? over?");
    private static readonly Phrase EachRow = new("in|on? all|each|every row");
    private static readonly Phrase ForStitch = new("for|as|to the? a? first?");
    private static readonly Phrase Length = new("inch|inches|cm|yards|yard");
    private static readonly Phrase NotChains = new("sp|loop|mesh|ring|from|st|arch");

    public static bool Read(Cursor cursor, StepList steps)
    {
        int from = cursor.At;
        if (steps.Steps.All(step => step is TurnStep or RemarkStep or ColourStep or AttachStep)) cursor.Take(Beginning);
        cursor.Take(Verb);
        if (TakeCount(cursor) is not { } count || cursor.Is(Length)) return false;
        if (TakeExtra(cursor) is { } extra) count = count with { Values = count.Values.Select(value => value + extra).ToEquatableArray(), Span = count.Span.Through(cursor.SpanFrom(cursor.At - 1)) };
        cursor.Take(Loosely);
        var chain = new ChainStep(count, ChainRole.Unstated, null, 0, cursor.SpanFrom(from));
        steps.Add(TakeStandsFor(cursor, chain, from));
        int turn = cursor.At;
        if (cursor.Take(ToTurn))
        {
            cursor.Take(EachRow);
            steps.Add(new TurnStep(cursor.SpanFrom(turn)));
        }
        return true;
    }

    private static SizedNumber? TakeCount(Cursor cursor)
    {
        int from = Math.Max(1, cursor.At);
        if (cursor.Take(ChainOf))
        {
            SizedNumber? of = Numbers.Take(cursor);
            cursor.Take(Stitches);
            return of;
        }
        if (cursor.Take(ChainWord))
        {
            if (cursor.Kind == TokenKind.Hyphen && !(cursor.Context.Tokens[from - 1].IsWord("beg") && cursor.Take(TokenKind.Hyphen))) return null;
            SizedNumber? after = Numbers.Take(cursor);
            if (after is not null && cursor.Is(NotChains) && !cursor.Is(Stitch)) return null;
            if (after is not null) cursor.Take(Stitch);
            return after;
        }
        SizedNumber? before = Numbers.Take(cursor);
        if (before is null && cursor.Now is { Word: "a" or "an" or "another" }) before = One(cursor);
        if (before is null || cursor.Kind == TokenKind.Hyphen || !cursor.Take(ChainWord) || cursor.Is(NotChains) && !cursor.Is(Stitch)) return null;
        cursor.Take(Stitch);
        return before;
    }

    /// <summary>'Ch 50 + 2 for turning', 'ch 50 (+2 to turn)': the chains that turn are told apart.</summary>
    private static int? TakeExtra(Cursor cursor)
    {
        int from = cursor.At;
        int partner = cursor.Partner();
        if (partner >= 0) cursor.At++;
        if ((cursor.TakeWord("plus") || cursor.Kind is TokenKind.Other or TokenKind.Star && cursor.Raw == "+" && cursor.At++ >= 0) && Numbers.TakePlain(cursor) is { } extra && extra <= MostTurning && cursor.Take(ForTurning))
        {
            while (cursor.Kind == TokenKind.Word && cursor.Now.Word is "ch" or "tch" or "first" or "row" or "rnd" or "of") cursor.At++;
            if (partner < 0 || cursor.At == partner)
            {
                if (partner >= 0) cursor.At++;
                return extra;
            }
        }
        cursor.At = from;
        return null;
    }

    private const int MostTurning = 6;
    private static readonly Phrase ForTurning = new("more? for|to|as the? turn");

    private static SizedNumber One(Cursor cursor)
    {
        int from = cursor.At++;
        return SizedNumber.Of(1, cursor.SpanFrom(from));
    }

    /// <summary>'ch 3 for first dc': the chain stands for it.</summary>
    private static ChainStep TakeStandsFor(Cursor cursor, ChainStep chain, int from)
    {
        int after = cursor.At;
        if (cursor.Take(ForStitch) && cursor.TakeStitch() is { } stitch && stitch != StitchId.Chain && stitch.Value != "picot")
            return chain with { Role = ChainRole.Counts, CountsAs = stitch, Span = cursor.SpanFrom(from) };
        cursor.At = after;
        if (CountsAsWords.Take(cursor) is { } said && cursor.At > after) return said.Of(chain) with { Span = cursor.SpanFrom(from) };
        cursor.At = after;
        // 'Chain 3. This counts as your first double crochet.': a sentence of its own, as beginners are told it.
        if (cursor.Kind == TokenKind.Dot && cursor.Ahead(1).Word is "this" or "it" && cursor.Ahead(2).Word is "count" or "will" or "does")
        {
            cursor.At++;
            if (CountsAsWords.Take(cursor) is { } sentence && (cursor.AtEnd || cursor.Kind == TokenKind.Dot)) return sentence.Of(chain) with { Span = cursor.SpanFrom(from) };
        }
        cursor.At = after;
        return chain;
    }
}
