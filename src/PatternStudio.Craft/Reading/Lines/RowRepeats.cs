using PatternStudio.Craft.Reading.Counts;
using PatternStudio.Craft.Reading.Places;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads 'Rep Rows 2 and 3 for 12 more rows', 'Repeat last row until piece measures 40 cm', 'Work even for length desired'.</summary>
internal static class RowRepeats
{
    private static readonly Phrase Rep = new("and? then? cont? to? rep|alternate|alternating from|between?");
    private static readonly Phrase WorkEven = new("work|cont work? even");
    private static readonly Phrase Cont = new("cont");
    private static readonly Phrase UntilWord = new("until|till");
    private static readonly Phrase ForRows = new("for # more? row|rnd");
    private const int MostWords = 20;
    private static readonly Phrase For = new("for");
    private static readonly Phrase AFurther = new("a? further|another");
    private static readonly Phrase More = new("more|additional|further");
    private static readonly Phrase RowWord = new("row|rnd");
    private static readonly Phrase UntilRow = new("until|to|through and? including? there? are?");
    private static readonly Phrase Until = new("until|to|till");
    private static readonly Phrase InAll = new("in|have all|total|been|worked|completed");
    private static readonly Phrase EndingWith = new("end|finishing with|on|after|by a|an?");
    private static readonly Phrase ThereAre = new("until|till there|you are|have");
    private static readonly Phrase Remain = new("remaining|left");

    public static RepeatRows? Take(Cursor cursor)
    {
        int from = cursor.At;
        EquatableArray<int> rows = [];
        if (TakeMoreAlike(cursor) is { } alike) return alike with { Span = cursor.SpanFrom(from) };
        if (TakeRowsEven(cursor) is { } straight) return TakeStated(cursor, straight) with { Span = cursor.SpanFrom(from) };
        bool workEven = TakeWorkEven(cursor), even = workEven || TakeInThisManner(cursor);
        RowReferences.Named? named = null;
        string? shaping = null;
        if (!even && (!cursor.Take(Rep) || (named = RowReferences.TakeRows(cursor)) is null && (shaping = TakeShapingRow(cursor)) is null))
        {
            cursor.At = from;
            return null;
        }
        if (named is not null) rows = named.Rows;
        RepeatRows repeat = TakeUntil(cursor, rows, named);
        repeat = TakeEnding(cursor, repeat);
        repeat = TakeStated(cursor, repeat);
        TakeChange(cursor);
        if (repeat.Stated is null) repeat = TakeStated(cursor, repeat);
        return repeat with { Span = cursor.SpanFrom(from), IsEven = workEven, Shaping = shaping };
    }

    /// <summary>'Rep dec row', 'Repeat the last increase round': which of the two.</summary>
    private static string? TakeShapingRow(Cursor cursor)
    {
        int from = cursor.At;
        cursor.TakeWord("the");
        cursor.TakeWord("last");
        string? kind = cursor.Now.Word switch { "dec" or "decrease" or "decreasing" => "dec", "inc" or "increase" or "increasing" => "inc", _ => null };
        if (kind is not null)
        {
            cursor.At++;
            if (cursor.Take(RowWord)) return kind;
        }
        cursor.At = from;
        return null;
    }

    /// <summary>'Work even', 'Cont even in hdc' up to the 'until'.</summary>
    private static bool TakeWorkEven(Cursor cursor)
    {
        if (!cursor.Take(WorkEven)) return false;
        int from = cursor.At;
        if (cursor.TakeWord("in"))
            while (!cursor.AtEnd && cursor.At - from < MostWords / 2 && cursor.Kind is TokenKind.Word or TokenKind.Hyphen && !cursor.Is(UntilWord) && !cursor.Is(ForRows)) cursor.At++;
        if (!cursor.Is(UntilWord) && !cursor.Is(ForRows)) cursor.At = from;
        return true;
    }

    /// <summary>'Work 8 rows straight', 'Work 4 (6, 8) rnds even', 'Work 2 rows without shaping'.</summary>
    private static RepeatRows? TakeRowsEven(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Work) && Numbers.Take(cursor) is { } count && cursor.Take(RowsEven) && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind))) return new RepeatRows([], RowsUntil.MoreRows, default) { Count = count, IsEven = true };
        cursor.At = from;
        return null;
    }

    private static readonly Phrase RowsEven = new("more? row|rnd even|straight|evenly|plain|without shaping?");

    /// <summary>'Work 10 more rows in the same way': the row before, so many times.</summary>
    private static RepeatRows? TakeMoreAlike(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Work) && Numbers.Take(cursor) is { } count && cursor.Take(MoreRowsAlike) && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind))) return new RepeatRows([], RowsUntil.MoreRows, default) { Count = count };
        cursor.At = from;
        return null;
    }

    private static readonly Phrase Work = new("work|make|crochet");
    private static readonly Phrase MoreRowsAlike = new("more|additional|further row|rnd in the? same|this way|manner|fashion");

    /// <summary>'Cont to inc 1 st at beg of every row in this manner until …': taken up to the 'until'.</summary>
    private static bool TakeInThisManner(Cursor cursor)
    {
        int from = cursor.At;
        if (cursor.Take(Cont))
        {
            int words = cursor.At;
            while (!cursor.AtEnd && cursor.At - words < MostWords && cursor.Kind is TokenKind.Word or TokenKind.Number && !cursor.Is(UntilWord) && !cursor.Is(ForRows)) cursor.At++;
            // 'Continue making one sc in each chain until you reach the end' is the row itself.
            if ((cursor.Is(UntilWord) || cursor.Is(ForRows)) && !cursor.Is(Extents.ReachEnd)) return true;
        }
        cursor.At = from;
        return false;
    }

    /// <summary>'… 4 times always decreasing in center of each section': the rows are not as they were told.</summary>
    private static void TakeChange(Cursor cursor)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (cursor.Take(Changing)) Steps.Clauses.TakeToStop(cursor);
        else cursor.At = from;
    }

    private static readonly Phrase Changing = new("always? increasing|decreasing|widening|narrowing");

    private static RepeatRows TakeUntil(Cursor cursor, EquatableArray<int> rows, RowReferences.Named? named)
    {
        cursor.Take(TokenKind.Comma);
        int from = cursor.At;
        foreach (Func<Cursor, EquatableArray<int>, RepeatRows?> take in new[] { TakeMoreRows, TakeTimes, TakeMeasure, TakeRowNumber, TakeStitchesRemain })
        {
            cursor.At = from;
            if (take(cursor, rows) is { } repeat) return WithLastRows(repeat, named);
        }
        cursor.At = from;
        Steps.Clauses.TakeToComma(cursor);
        return WithLastRows(new RepeatRows(rows, RowsUntil.AsWished, default), named);
    }

    private static RepeatRows WithLastRows(RepeatRows repeat, RowReferences.Named? named) =>
        named?.LastRows is { } last ? repeat with { LastRows = last } : repeat;

    /// <summary>'for 12 (20, 40) more rows', 'for 12 rows'.</summary>
    private static RepeatRows? TakeMoreRows(Cursor cursor, EquatableArray<int> rows)
    {
        cursor.Take(For);
        cursor.Take(AFurther);
        if (Numbers.Take(cursor) is not { } count) return null;
        cursor.Take(More);
        if (!cursor.Take(RowWord)) return null;
        cursor.Take(More);
        return new RepeatRows(rows, RowsUntil.MoreRows, default) { Count = count };
    }

    private static RepeatRows? TakeTimes(Cursor cursor, EquatableArray<int> rows) =>
        Extents.TakeTimes(cursor) is { } times ? new RepeatRows(rows, RowsUntil.MoreTimes, default) { Count = times.Count } : null;

    private static RepeatRows? TakeMeasure(Cursor cursor, EquatableArray<int> rows) =>
        Measures.Take(cursor) is { } millimetres ? new RepeatRows(rows, RowsUntil.Measures, default) { Millimetres = millimetres } : null;

    /// <summary>'until Row 20', 'through Row 20', 'until there are 20 rows in all'.</summary>
    private static RepeatRows? TakeRowNumber(Cursor cursor, EquatableArray<int> rows)
    {
        if (!cursor.Take(ThereAre) && !cursor.Take(UntilRow)) return null;
        cursor.TakeWord("the");
        if (Numbers.TakeOrdinal(cursor) is { } nth && cursor.Take(RowWord)) return new RepeatRows(rows, RowsUntil.RowNumber, default) { Count = SizedNumber.Of(nth) };
        bool row = cursor.Take(RowWord);
        if (Numbers.Take(cursor) is not { } number || (!row && !cursor.Take(RowWord))) return null;
        while (cursor.Take(InAll)) { }
        return new RepeatRows(rows, RowsUntil.RowNumber, default) { Count = number };
    }

    /// <summary>'until 3 sts remain', 'until there are 40 sts'.</summary>
    private static RepeatRows? TakeStitchesRemain(Cursor cursor, EquatableArray<int> rows)
    {
        if (!cursor.Take(ThereAre) && !cursor.Take(Until)) return null;
        if (Numbers.Take(cursor) is not { } count || PlaceNouns.Take(cursor) is null) return null;
        cursor.Take(Remain);
        return new RepeatRows(rows, RowsUntil.StitchesRemain, default) { Count = count };
    }

    /// <summary>'ending with a Row 3', 'ending with a RS row'.</summary>
    private static RepeatRows TakeEnding(Cursor cursor, RepeatRows repeat)
    {
        int from = cursor.At;
        cursor.Take(TokenKind.Comma);
        if (!cursor.Take(EndingWith))
        {
            cursor.At = from;
            return repeat;
        }
        if (cursor.Take(RowWord) && Numbers.TakePlain(cursor) is { } row) return repeat with { EndingWith = row };
        FabricSide? side = cursor.Now.Word switch { "rs" or "right" => FabricSide.Right, "ws" or "wrong" => FabricSide.Wrong, _ => null };
        Steps.Clauses.TakeToComma(cursor);
        return repeat with { EndingSide = side };
    }

    private static RepeatRows TakeStated(Cursor cursor, RepeatRows repeat)
    {
        int from = cursor.At;
        cursor.SkipSeparators();
        if (cursor.Partner() is >= 0 and int partner && StatedCounts.Whole(cursor.Inside(partner), cursor.Context.Source) is { } inBrackets)
        {
            int start = cursor.At;
            cursor.At = partner + 1;
            return repeat with { Stated = inBrackets with { Span = cursor.SpanFrom(start), Text = cursor.Slice(start, cursor.At) } };
        }
        if (cursor.At > from && cursor.Kind == TokenKind.Number && StatedCounts.Take(cursor) is { } count && (cursor.AtEnd || cursor.Kind == TokenKind.Dot)) return repeat with { Stated = count };
        cursor.At = from;
        return repeat;
    }
}
