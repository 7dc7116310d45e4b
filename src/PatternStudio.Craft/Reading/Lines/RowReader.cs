using PatternStudio.Craft.Reading.Counts;
using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads the body of a row: its steps, the count it states, and words after it that repeat rows.</summary>
internal static class RowReader
{
    private static readonly Phrase YouHave = new("you|there should|will|are|now? have|be|now|are");

    private static readonly Phrase[] StillHave = [new("you|you'll should|will? still|now? have|be"), new("there should|will still|now be"), new("you should|will? end up? with")];

    /// <summary>Reads a row with its heading.</summary>
    public static IEnumerable<PieceItem> Read(Cursor cursor, RowHeading heading)
    {
        cursor.Context.RowLoop = LoopChoice.Both;
        cursor.Context.HeadingIsNext = heading.Numbering == RowNumbering.Next;
        int from = cursor.At;
        var steps = new StepList();
        var repeats = new List<PieceItem>();
        if (heading.Kind == RowKind.Foundation && TakeNumberOfChains(cursor) is { } chains) steps.Add(chains);
        while (!cursor.AtEnd && repeats.Count == 0) ReadOne(cursor, steps, repeats);
        RowInstruction row = RowEnds.Finish(cursor.Context, heading, steps, RowSpan(cursor, heading, from));
        bool onlyRepeats = row.Steps.IsEmpty && row.Stated is null && repeats.Count > 0 && (heading.Text.Length == 0 || heading.Numbering == RowNumbering.Next);
        if (!onlyRepeats) yield return row;
        foreach (PieceItem item in repeats) yield return item;
        if (!cursor.AtEnd)
            foreach (PieceItem item in LooseLines.Read(new Cursor(cursor.Context, cursor.At, cursor.End))) yield return item;
    }

    /// <summary>'Foundation chain: 21': the heading says of what.</summary>
    private static ChainStep? TakeNumberOfChains(Cursor cursor)
    {
        int from = cursor.At;
        if (Numbers.Take(cursor) is { } count && (cursor.AtEnd || cursor.Kind is TokenKind.Dot or TokenKind.Comma or TokenKind.Semicolon)) return new ChainStep(count, ChainRole.Unstated, null, 0, cursor.SpanFrom(from));
        cursor.At = from;
        return null;
    }

    private static TextSpan RowSpan(Cursor cursor, RowHeading heading, int from) =>
        heading.Text.Length > 0 ? heading.Span.Through(cursor.Span(Math.Min(from, cursor.At), cursor.At)) : cursor.Span(from, cursor.At);

    private static void ReadOne(Cursor cursor, StepList steps, List<PieceItem> repeats)
    {
        bool newSentence = steps.Count == 0 || AfterSentence(cursor);
        if (TakeCount(cursor, steps)) return;
        cursor.SkipSeparators();
        newSentence |= AfterSentence(cursor);
        if (newSentence && RowReferences.ReadRepeat(cursor, steps) is { } repeat) repeats.Add(repeat);
        else if (!newSentence && RowReferences.ReadRepeatOfRows(cursor, steps) is { } ofRows) repeats.Add(ofRows);
        else if (!RowReferences.ReadAsRow(cursor, steps)) StepReader.ReadNext(cursor, steps);
    }

    private static bool AfterSentence(Cursor cursor) =>
        cursor.At > cursor.Start && cursor.Ahead(-1).Kind is TokenKind.Dot or TokenKind.Close or TokenKind.Dash;

    /// <summary>'23 sts (5 bo, 18 sc)': the brackets say of what.</summary>
    private static StatedCount TakeDetail(Cursor cursor, StatedCount count)
    {
        int partner = cursor.Partner();
        if (partner < 0 || StatedCounts.Whole(cursor.Inside(partner), cursor.Context.Source) is not { } detail) return count;
        cursor.At = partner + 1;
        return count with { Items = count.Items.Concat(detail.Items).ToEquatableArray() };
    }

    /// <summary>'3 sp, 7 dc, 3 sp, 4 dc': what names a thing twice is no count, but the row itself, square by square.</summary>
    private static bool ListsTwice(StatedCount count) => count.Items.Count > 2 && !count.PerRow && count.Items.GroupBy(item => (item.Thing, item.Kind)).Any(group => group.Count() > 1);

    /// <summary>'— 50 dc (beginning ch counts as dc)': what stands in brackets behind the count ends its sentence.</summary>
    private static bool IsLastBracket(Cursor cursor)
    {
        int from = cursor.At, partner = cursor.Partner();
        cursor.At = partner + 1;
        bool last = partner >= 0 && (cursor.AtEnd || cursor.Kind == TokenKind.Dot);
        cursor.At = from;
        return last;
    }

    /// <summary>'— 60 hdc; turn.', '= 24 sc, join.': behind the count only what closes the row.</summary>
    private static bool ClosesRow(Cursor cursor)
    {
        int from = cursor.At;
        bool closes = cursor.Kind is TokenKind.Comma or TokenKind.Semicolon;
        cursor.SkipSeparators();
        closes = closes && cursor.Take(Closing) && (cursor.AtEnd || Cursor.IsSeparator(cursor.Kind));
        cursor.At = from;
        return closes;
    }

    /// <summary>'1 sc in each ch across; 47 sc, turn': what comes behind can be no stitches.</summary>
    private static bool Sweeps(Step? step) => step switch
    {
        StitchStep { Where: { Choice: PlaceChoice.Each, Extent.Kind: ExtentKind.ToEnd } or { And: { Choice: PlaceChoice.Each, Extent.Kind: ExtentKind.ToEnd } } } => true,
        RepeatStep { Extent.Kind: ExtentKind.ToEnd, Ending.IsEmpty: true } => true,
        _ => false,
    };

    private static readonly Phrase Closing = new("do? not? turn|join|fasten work|rnd|off?");

    /// <summary>'— 20 sts', ': 12 dc.', '. 16 tr.', '. - (60, 60) dc' where the first size has none: a count after a mark that is its own clause.</summary>
    private static bool TakeCount(Cursor cursor, StepList steps)
    {
        if (steps.Count == 0) return false;
        int from = cursor.At;
        bool marked = cursor.Kind is TokenKind.Dash or TokenKind.Equal or TokenKind.Colon or TokenKind.Dot or TokenKind.Semicolon || (cursor.At > cursor.Start && cursor.Ahead(-1).Kind is TokenKind.Dot);
        bool dashed = cursor.Kind is TokenKind.Dash or TokenKind.Equal || cursor.Kind == TokenKind.Semicolon && Sweeps(steps.Last);
        cursor.SkipSeparators();
        if (cursor.Kind == TokenKind.Open && cursor.At > from && cursor.Ahead(-1).Kind == TokenKind.Dash) cursor.At--;
        int start = cursor.At;
        bool said = StillHave.Any(cursor.Take) || cursor.Take(YouHave);
        if (marked && (said || cursor.Kind is TokenKind.Number or TokenKind.Dash) && StatedCounts.Take(cursor) is { } count && !ListsTwice(count) && TakeDetail(cursor, count) is { } whole && (StatedCounts.TakeWhatCounts(cursor) || cursor.AtEnd || cursor.Kind is TokenKind.Dot || IsLastBracket(cursor) || dashed && ClosesRow(cursor)))
        {
            steps.Add(new CountedSoFar(whole with { Span = cursor.SpanFrom(start), Text = cursor.Slice(start, cursor.At) }, cursor.SpanFrom(start)));
            return true;
        }
        cursor.At = from;
        return false;
    }
}
