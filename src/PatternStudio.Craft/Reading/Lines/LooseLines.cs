using PatternStudio.Craft.Reading.Steps;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads a line without a row heading: a foundation, an unlabelled row, a repeat of rows, or words that are no row.</summary>
internal static class LooseLines
{
    public static IEnumerable<PieceItem> Read(Cursor cursor)
    {
        cursor.SkipSeparators();
        if (cursor.Is(Step) && cursor.Ahead(2).Kind is TokenKind.Colon or TokenKind.Dot or TokenKind.Dash) cursor.At += 3;
        if (cursor.AtEnd) return [];
        int from = cursor.At;
        if (PieceReferences.Take(cursor) is { } reference) return cursor.AtEnd ? [reference] : [reference, .. Read(new Cursor(cursor.Context, cursor.At, cursor.End))];
        if (OpenFoundations.Take(cursor) is { Count: > 0 } open) return cursor.AtEnd ? open : [.. open, .. Read(new Cursor(cursor.Context, cursor.At, cursor.End))];
        if (Progressions.Take(cursor) is { } progression) return cursor.AtEnd ? [progression] : [progression, .. Read(new Cursor(cursor.Context, cursor.At, cursor.End))];
        GoToChain(cursor);
        bool outer = cursor.Context.LineHasNoHeading;
        cursor.Context.LineHasNoHeading = true;
        var items = RowReader.Read(cursor, new RowHeading(RowKind.Row, RowNumbering.None, "", new TextSpan(cursor.Now.Span.Start, 0))).ToList();
        cursor.Context.LineHasNoHeading = outer;
        return items.Count > 0 && items[0] is RowInstruction row && !IsInstruction(row) ? [Passage(cursor, from)] : items;
    }

    /// <summary>'Pattern No. 1: Make a chain of 8 stitches', 'For each large circle make a chain of 20': the words before it name the piece.</summary>
    private static void GoToChain(Cursor cursor)
    {
        int from = cursor.At;
        for (int i = 0; i < 14 && !cursor.AtEnd && !cursor.Is(Repeating); i++, cursor.At++)
            if (cursor.Is(MakeChain) || cursor.Is(CastOn) || i > 0 && (ChainsAfterTitle(cursor) || FoundationAfterTitle(cursor))) return;
        cursor.At = from;
    }

    private static readonly Phrase Step = new("step #");
    private static readonly Phrase HeadsRow = new("row|rnd|r #");

    /// <summary>'Eyelet sampler. Ch 22.', 'Sampler strip: Ch 26.'</summary>
    private static bool ChainsAfterTitle(Cursor cursor)
    {
        if (!cursor.Is(ChainSome)) return false;
        TokenKind before = cursor.Ahead(-1).Kind, after = cursor.Ahead(2).Kind;
        return before == TokenKind.Dot && (after == TokenKind.End || Cursor.IsSeparator(after))
            || before == TokenKind.Colon && cursor.Ahead(1).Value >= LongChain && (after is TokenKind.End or TokenKind.Dot or TokenKind.Open || after == TokenKind.Comma && cursor.Ahead(3).Word is "join" or "being" or "taking" or "without");
    }

    /// <summary>'Hdc foundation: 72 fhdc, join.'</summary>
    private static bool FoundationAfterTitle(Cursor cursor) => cursor.Ahead(-1).Kind == TokenKind.Colon && (cursor.Is(SomeFoundation) || cursor.Is(FoundationOfSome));

    private static readonly Phrase SomeFoundation = new("# fsc|fhdc|fdc|ftr|fhtr");
    private static readonly Phrase FoundationOfSome = new("fsc|fhdc|fdc|ftr|fhtr #");

    /// <summary>Chains that are a foundation; fewer may be the turn's: 'a multiple of 6 + 2, plus ch 1 to turn'.</summary>
    public const int LongChain = 10;

    private static readonly Phrase ChainSome = new("ch #");
    private static readonly Phrase MakeChain = new("make|with a ch of #");
    private static readonly Phrase CastOn = new("cast on # ch");
    private static readonly Phrase Repeating = new("rep|next|join|sew");

    /// <summary>A line is an instruction where it begins with one; all else is prose.</summary>
    private static bool IsInstruction(RowInstruction row)
    {
        if (row.Steps.Count > 1 && row.Steps[0] is StitchStep first && row.Steps[1] is UnreadStep next && next.Span.Start - first.Span.End <= 1) return false;
        foreach (Step step in row.Steps)
        {
            if (step is ChainStep or StitchStep or GroupStep or RepeatStep or MagicRingStep or JoinStep or SkipStep or AsRowStep) return true;
            if (step is not (ColourStep or AttachStep or RemarkStep or MarkerStep or TurnStep or DoNotTurnStep or UncountedStep or FastenOffStep or MotionsStep)) return false;
        }
        return row.Steps.Any(step => step is ColourStep or AttachStep) && row.Steps.All(step => step is ColourStep or AttachStep or RemarkStep);
    }

    private static Passage Passage(Cursor cursor, int from)
    {
        var whole = new Cursor(cursor.Context, from, cursor.End);
        string text = whole.Slice(from, cursor.End);
        var steps = StepReader.ReadAll(whole).Steps;
        bool remark = !Statements.Instructions.StartAt(new Cursor(cursor.Context, from, cursor.End)) || steps.All(step => step is FastenOffStep or RemarkStep or MarkerStep or TurnStep or ColourStep or UncountedStep or JoinStep { Where.Choice: PlaceChoice.OtherPiece }) || RemarkWords.NameNoWork(new Cursor(cursor.Context, from, cursor.End));
        // 'Row 5 …' that does not read as a row is never taken for prose where it names stitches.
        if (HeadsRow.Match(cursor.Context.Tokens.AsSpan(0, cursor.End), from) >= 0 && !RemarkWords.NameNoWork(new Cursor(cursor.Context, from, cursor.End))) remark = false;
        // Nor is what repeats from a star.
        if (steps.Any(step => step is RepeatStep { Mark: RepeatMark.Star })) remark = false;
        return new Passage(text, remark, whole.Span(from, cursor.End));
    }
}
