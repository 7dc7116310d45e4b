using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Headings;

/// <summary>
/// Reads the label of a row: 'Row 1 (RS):', 'Rows 3–10:', 'Rnds 4 and 6:', '2nd Round.', '5th, 6th and 7th rows.', 'Next 4 rows:',
/// 'Set-up row:', 'Row 2 and all even rows:'.
/// </summary>
internal static class RowHeadings
{
    private static readonly Phrase EvenRows = new("and all|every|each other|even|odd|alt|rs|ws|right|wrong? number|numbered|side|alternate? row|rnd");
    private static readonly Phrase RowsToCome = new("and all|every|each|the? next|remaining|subsequent|other|later|rest row|rnd");
    private static readonly Phrase AllRows = new("all|every other|even|odd|alt|rs|ws|right|wrong? number|numbered|side? row|rnd");
    private static readonly Phrase Inclusive = new("inclusive|incl");
    private static readonly Phrase Named = new("next|foundation|set|setup|base|joining|starting|edging|border|beg|first|last|final|increase|decrease up? row|rnd");
    private static readonly Phrase Instructing = new("rep|work|cont|for|in|on|at|this|join|turn|skip|with|from|make|note|gauge|each|when|after|before|as");
    private static readonly Phrase FoundationChain = new("foundation ch|ring?");
    private static readonly Phrase StartingChain = new("starting|beg|base ch");

    /// <summary>Takes a heading that stands here; null where none does.</summary>
    public static RowHeading? Take(Cursor cursor, bool startsLine)
    {
        int from = cursor.At;
        if (TakeWhole(cursor, startsLine, ranges: true) is { } heading) return heading;
        cursor.At = from;
        if (startsLine && TakeColourLabel(cursor) && TakeWhole(cursor, startsLine, ranges: true) is { } coloured) return coloured;
        cursor.At = from;
        if (TakeWhole(cursor, startsLine, ranges: false) is { } single) return single;
        cursor.At = from;
        return startsLine && cursor.Context.HasBareHeadings ? BareHeadings.Take(cursor) : null;
    }

    private static readonly Phrase ColourWord = new("with|in|color");

    /// <summary>'Yellow: R1: …', 'Color B – Row 5: …': the yarn, before the row's own label.</summary>
    private static bool TakeColourLabel(Cursor cursor)
    {
        bool said = cursor.Take(ColourWord);
        if (cursor.Kind != TokenKind.Word || !(said || Synonyms.IsColour(cursor.Now.Word) || cursor.Now.Word is "mc" or "cc")) return false;
        cursor.At++;
        return cursor.Take(TokenKind.Colon) || cursor.Take(TokenKind.Dash) || cursor.Take(TokenKind.Comma);
    }

    /// <summary>'Row 1 — 1 dc in …' is no range: where a range leads to no heading, it is read without.</summary>
    private static RowHeading? TakeWhole(Cursor cursor, bool startsLine, bool ranges)
    {
        int from = cursor.At;
        RowHeading? heading = TakeNumbered(cursor, ranges) ?? TakeOrdinals(cursor) ?? TakeNext(cursor) ?? TakeEvery(cursor) ?? TakeNamed(cursor) ?? (startsLine ? TakeOwnName(cursor) : null);
        if (heading is not null)
        {
            heading = HeadingSides.Take(cursor, heading);
            if (Statements.SizesOnly.TakeAside(cursor) is { } only) heading = heading with { OnlySizes = only.ToEquatableArray() };
            TakeAside(cursor);
            heading = HeadingSides.Take(cursor, heading);
            int end = cursor.At;
            int mark = cursor.At;
            if (TakeEnd(cursor, startsLine) && !(ranges && cursor.At == mark && IsOneRow(cursor, from, heading))) return heading with { Numbers = heading.Numbers.Distinct().ToEquatableArray(), Text = cursor.Slice(from, end), Span = cursor.Span(from, end) };
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'Rnd 1 – 6 sc in ring' is round 1, with six stitches: no range, where the word is singular and a stitch follows at once.</summary>
    private static bool IsOneRow(Cursor cursor, int from, RowHeading heading)
    {
        if (heading.Numbering != RowNumbering.Range && heading.Numbers.Count < 2) return false;
        if (cursor.Context.Source.Slice(cursor.Context.Tokens[from].Span).EndsWith('s')) return false;
        int at = cursor.At;
        bool stitch = cursor.TakeStitch() is not null;
        cursor.At = at;
        return stitch;
    }

    /// <summary>What parts a heading from its row; at the start of a line a capital, a bracket or a star will do.</summary>
    private static bool TakeEnd(Cursor cursor, bool startsLine)
    {
        TakeOfPiece(cursor, startsLine);
        if (startsLine && cursor.Kind == TokenKind.Close && cursor.Context.Partners[cursor.At] < 0)
        {
            // 'R1) 6 sc …', 'Row 2) …'.
            cursor.At++;
            cursor.Take(TokenKind.Colon);
            return true;
        }
        if (cursor.Kind is TokenKind.Colon or TokenKind.Dot or TokenKind.Dash)
        {
            while (cursor.Kind is TokenKind.Colon or TokenKind.Dot or TokenKind.Dash) cursor.At++;
            return true;
        }
        if (cursor.AtEnd || !startsLine) return false;
        if (cursor.Kind == TokenKind.Comma && cursor.Ahead(1).Kind == TokenKind.Word) return IsCapital(cursor, 1) && cursor.Take(TokenKind.Comma);
        return cursor.Kind is TokenKind.Star or TokenKind.Open || (cursor.Kind == TokenKind.Word && IsCapital(cursor, 0)) || Statements.Instructions.StartAt(cursor);
    }

    /// <summary>'Row 2 (dec row):', 'Rnd 7 (eyes):': words in brackets that name the row. Where they name sizes, they say who works it, and stay.</summary>
    private static void TakeAside(Cursor cursor)
    {
        const int MostWords = 5;
        int partner = cursor.Partner();
        if (partner < 0 || partner - cursor.At > MostWords + 1 || cursor.Context.Tokens[Math.Min(partner + 1, cursor.Context.Tokens.Length - 1)].Kind is not (TokenKind.Colon or TokenKind.Dot or TokenKind.Dash)) return;
        for (int i = cursor.At + 1; i < partner; i++)
            if (cursor.Context.Tokens[i] is not { Kind: TokenKind.Word } word || word.Word is "size" or "sizes" or "only" or "for" or "ch" or "counts" or "count" || Synonyms.Number(word.Word) is not null) return;
        cursor.At = partner + 1;
    }

    /// <summary>'1st round of outer edge of motif:'.</summary>
    private static void TakeOfPiece(Cursor cursor, bool startsLine)
    {
        int from = cursor.At;
        if (!startsLine || !(cursor.TakeWord("of") || cursor.TakeWord("for"))) return;
        while (cursor.Kind == TokenKind.Word && cursor.At - from < 10) cursor.At++;
        if (cursor.Kind is not (TokenKind.Colon or TokenKind.Dash)) cursor.At = from;
    }

    private static bool IsCapital(Cursor cursor, int by) =>
        char.IsUpper(cursor.Context.Source.Content[cursor.Ahead(by).Span.Start]);

    private static RowHeading Of(RowKind kind, RowNumbering numbering) => new(kind, numbering, "", default);

    private static RowKind? TakeKind(Cursor cursor) =>
        cursor.TakeWord("row") ? RowKind.Row : cursor.TakeWord("rnd") ? RowKind.Round : TakeLetter(cursor) ? cursor.Context.LetterKind : null;

    /// <summary>'R1:' as toy makers write it for a round, others for a row.</summary>
    private static bool TakeLetter(Cursor cursor)
    {
        if (cursor.Now.Word is not ("r" or "rd") || cursor.Ahead(1).Kind != TokenKind.Number || !cursor.Ahead(1).Glued) return false;
        cursor.At++;
        return true;
    }

    /// <summary>'Row 3', 'Rows 3–10 (12)', 'Rows 4, 6 and 8', 'Row 2 and all even rows'.</summary>
    private static RowHeading? TakeNumbered(Cursor cursor, bool ranges)
    {
        int from = cursor.At;
        if (TakeKind(cursor) is { } kind && Numbers.Take(cursor) is { } first && first.Values[0] is { } number) return TakeRest(cursor, kind, first, number, ranges);
        cursor.At = from;
        return null;
    }

    private static RowHeading TakeRest(Cursor cursor, RowKind kind, SizedNumber first, int number, bool ranges)
    {
        int after = cursor.At;
        RowHeading sided = HeadingSides.Take(cursor, Of(kind, RowNumbering.EveryOther) with { Numbers = [number] });
        if (cursor.Take(EvenRows)) return sided;
        cursor.At = after;
        if (cursor.Take(RowsToCome)) return Of(kind, RowNumbering.Listed) with { Numbers = [number] };
        if (ranges && RowNumbers.TakeLast(cursor) is { } last && last.Values[0] > number) return Of(kind, RowNumbering.Range) with { First = first, Last = last };
        cursor.At = after;
        // 'Row 31 (33, 35): …': one row, whose number differs by size.
        if (!first.IsPlain) return Of(kind, RowNumbering.Range) with { First = first, Last = first };
        return Of(kind, RowNumbering.Listed) with { Numbers = ranges ? RowNumbers.TakeMore(cursor, number) : [number] };
    }

    /// <summary>'2nd Row', '5th, 6th and 7th rows', '13th to 16th Rows'.</summary>
    private static RowHeading? TakeOrdinals(Cursor cursor)
    {
        int from = cursor.At;
        if (Numbers.TakeOrdinal(cursor) is { } first)
        {
            if (RowNumbers.TakeLastOrdinal(cursor) is { } last && TakeKind(cursor) is { } ranged)
            {
                cursor.Take(Inclusive);
                return Of(ranged, RowNumbering.Range) with { First = SizedNumber.Of(first), Last = SizedNumber.Of(last) };
            }
            cursor.At = from + 1;
            EquatableArray<int> numbers = RowNumbers.TakeMoreOrdinals(cursor, first);
            if (TakeKind(cursor) is { } kind)
            {
                bool every = cursor.Take(EvenRows);
                return Of(kind, every ? RowNumbering.EveryOther : RowNumbering.Listed) with { Numbers = numbers };
            }
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'Next row', 'Next 4 rounds'.</summary>
    private static RowHeading? TakeNext(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.TakeWord("next"))
        {
            TakeNamedAside(cursor);
            SizedNumber count = Numbers.Take(cursor) ?? SizedNumber.Of(1, cursor.SpanFrom(cursor.At));
            if (TakeKind(cursor) is { } kind) return Of(kind, RowNumbering.Next) with { Last = count };
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'Next (dec) row', 'Next [buttonhole] row': what the row is for.</summary>
    private static void TakeNamedAside(Cursor cursor)
    {
        int from = cursor.At, partner = cursor.Partner();
        if (partner < 0 || partner - cursor.At > 3) return;
        for (int i = from + 1; i < partner; i++)
            if (cursor.Context.Tokens[i].Kind is not (TokenKind.Word or TokenKind.Hyphen)) return;
        cursor.At = partner + 1;
        if (!cursor.TakeWord("row") && !cursor.TakeWord("rnd")) cursor.At = from;
        else cursor.At--;
    }

    /// <summary>'All even rows', 'All WS rows'.</summary>
    private static RowHeading? TakeEvery(Cursor cursor)
    {
        int from = cursor.At;
        if (!cursor.Take(AllRows)) return null;
        RowKind kind = cursor.Ahead(-1).IsWord("rnd") ? RowKind.Round : RowKind.Row;
        FabricSide? side = null;
        for (int i = from; i < cursor.At; i++)
            side = cursor.Context.Tokens[i].Word switch { "rs" or "right" => FabricSide.Right, "ws" or "wrong" => FabricSide.Wrong, _ => side };
        return Of(kind, RowNumbering.EveryOther) with { Side = side };
    }

    /// <summary>'Foundation row', 'Set-up row', 'Foundation ch'.</summary>
    private static RowHeading? TakeNamed(Cursor cursor)
    {
        if (!cursor.Take(Named)) return cursor.Take(FoundationChain) || cursor.Take(StartingChain) ? Of(RowKind.Foundation, RowNumbering.None) : null;
        RowKind kind = cursor.Ahead(-1).IsWord("rnd") ? RowKind.Round : RowKind.Row;
        return Of(kind, RowNumbering.Next) with { Last = SizedNumber.Of(1) };
    }

    /// <summary>'Ribbing Round:', 'Picot row:', 'Crown shaping rnd:': a row with a name of its own.</summary>
    private static RowHeading? TakeOwnName(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Kind == TokenKind.Word && IsCapital(cursor, 0) && !cursor.Is(Instructing))
        {
            while (cursor.At - from < 3 && cursor.Kind is TokenKind.Word or TokenKind.Hyphen && cursor.Now.Word is not ("row" or "rnd" or "the" or "of" or "in")) cursor.At++;
            if (cursor.At > from && TakeKind(cursor) is { } kind && cursor.Kind == TokenKind.Colon) return Of(kind, RowNumbering.Next) with { Last = SizedNumber.Of(1) };
        }
        cursor.At = from;
        return null;
    }
}
