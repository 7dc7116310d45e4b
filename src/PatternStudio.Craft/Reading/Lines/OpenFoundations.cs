using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>
/// Reads foundations whose length is left to the maker: 'Make a sufficiently long foundation chain', 'Chain a number of stitches divisible by 3', 'Ch a multiple of
/// 6 + 2', and the first row where old books tell it in the same breath: '…, and work the 1st row as follows: …'.
/// </summary>
internal static class OpenFoundations
{
    private const int MostWords = 24;
    private static readonly Phrase Opens = new("having|on|beg|make|ch|with|work|commence|a|foundation|for");
    private static readonly PhraseSet Lengths = new([new("sufficiently long"), new("sufficient|required|desired|necessary|requisite|any length"), new("length required|desired|wanted|necessary|requisite|you")]);
    private static readonly PhraseSet Divided = new([new("divisible by"), new("divided by"), new("multiple of")]);
    private static readonly Phrase Plus = new("plus|and");
    private static readonly Phrase Even = new("even number");
    private static readonly Phrase Odd = new("odd|uneven number");
    private static readonly Phrase FirstRow = new("and? then? work|make the? first row");
    private static readonly Phrase AsFollows = new("as follows|follow|next");
    private static readonly Phrase EntirelyIn = new("entirely|all|wholly? in|of");

    /// <summary>Takes the foundation, and the first row told with it; empty where none stands here.</summary>
    public static IReadOnlyList<PieceItem> Take(Cursor cursor)
    {
        int from = cursor.At;
        if (TakeChain(cursor) is not { } chain)
        {
            cursor.At = from;
            return [];
        }
        var foundation = new RowInstruction(new RowHeading(RowKind.Foundation, RowNumbering.None, "", new Text.TextSpan(chain.Span.Start, 0)), [chain], null, chain.Span);
        return TakeFirstRow(cursor) is { } rows ? [foundation, .. rows] : [foundation];
    }

    private static OpenChainStep? TakeChain(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Is(Opens)) return null;
        bool open = false, chain = false;
        int of = 1, plus = 0;
        while (!cursor.AtEnd && cursor.At - from < MostWords && cursor.Kind is not (TokenKind.Dot or TokenKind.Semicolon or TokenKind.Colon or TokenKind.Star or TokenKind.Open) && !cursor.Is(FirstRow))
        {
            if (cursor.Kind == TokenKind.Comma) break;
            if (Lengths.IsAt(cursor)) open = true;
            else if (cursor.Is(Even)) (open, of) = (true, 2);
            else if (cursor.Is(Odd)) (open, of, plus) = (true, 2, 1);
            else if (Divided.IsAt(cursor))
            {
                cursor.At += 2;
                if (Numbers.TakePlain(cursor) is not (> 0 and { } by)) return null;
                (open, of) = (true, by);
                int after = cursor.At;
                bool more = cursor.Take(Plus);
                if (!more && !cursor.AtEnd && cursor.Raw is "+")
                {
                    cursor.At++;
                    more = true;
                }
                if (more && Numbers.TakePlain(cursor) is { } extra) plus = extra;
                else cursor.At = after;
                continue;
            }
            else if (cursor.Kind is TokenKind.Number) return null;
            chain |= cursor.Now.IsWord("ch");
            cursor.At++;
        }
        return open && chain ? new OpenChainStep(of, plus, cursor.SpanFrom(from)) : null;
    }

    /// <summary>', and work the 1st row as follows: …', 'work the 1st row entirely in double stitch'.</summary>
    private static List<PieceItem>? TakeFirstRow(Cursor cursor)
    {
        int from = cursor.At;
        while (cursor.Kind is TokenKind.Comma or TokenKind.Semicolon) cursor.At++;
        if (!cursor.Take(FirstRow))
        {
            cursor.At = from;
            return null;
        }
        var heading = new RowHeading(RowKind.Row, RowNumbering.Listed, cursor.Slice(cursor.At - 2, cursor.At), cursor.Span(cursor.At - 2, cursor.At)) { Numbers = [1] };
        cursor.Take(AsFollows);
        int body = cursor.At;
        if (cursor.Take(EntirelyIn) && cursor.TakeStitch() is { } stitch && stitch != StitchId.Chain && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind))) return [OneInEach(cursor, heading, stitch, body)];
        cursor.At = body;
        cursor.SkipSeparators();
        return [.. RowReader.Read(cursor, heading)];
    }

    private static RowInstruction OneInEach(Cursor cursor, RowHeading heading, StitchId stitch, int from)
    {
        Text.TextSpan span = cursor.SpanFrom(from);
        var each = Placement.EachToEnd(PlaceKind.AnyStitch, span);
        return new RowInstruction(heading, [new StitchStep(stitch, SizedNumber.Of(1, new Text.TextSpan(span.Start, 0)), null, each, span)], null, heading.Span.Through(span));
    }
}
