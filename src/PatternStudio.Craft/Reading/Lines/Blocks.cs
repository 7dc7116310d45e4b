using PatternStudio.Craft.Reading.Headings;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>A row with its heading, or a stretch of text without one; it may wrap over several lines.</summary>
/// <param name="Heading">Null where there is none.</param>
/// <param name="Start">Index of the first token.</param>
/// <param name="Body">Index of the first token after the heading.</param>
/// <param name="End">Index after the last token.</param>
internal sealed record Block(RowHeading? Heading, int Start, int Body, int End, bool AfterBlank)
{
    /// <summary>True where the next line follows directly and begins an instruction.</summary>
    public bool HeadsInstruction { get; init; }
}

/// <summary>Parts the text into blocks: a heading starts a row, at the start of a line or after a full stop; other lines go on or stand alone.</summary>
internal static class Blocks
{
    private const int LongLine = 60;

    public static List<Block> Of(ReadingContext context)
    {
        var blocks = new List<Block>();
        foreach (TextLine line in TextLines.Of(context))
        {
            foreach (Block block in Split(context, line))
            {
                if (block.Heading is null && block.Start == line.Start && blocks.Count > 0 && GoesOn(context, blocks[^1], line)) blocks[^1] = blocks[^1] with { End = block.End };
                else blocks.Add(block);
            }
        }
        for (int i = 0; i + 1 < blocks.Count; i++)
            if (!blocks[i + 1].AfterBlank && (blocks[i + 1].Heading is not null || Statements.Instructions.StartAt(new Cursor(context, blocks[i + 1].Body, blocks[i + 1].End))))
                blocks[i] = blocks[i] with { HeadsInstruction = true };
        return blocks;
    }

    /// <summary>A line, parted before each row heading inside it.</summary>
    private static IEnumerable<Block> Split(ReadingContext context, TextLine line)
    {
        int start = line.Start;
        (RowHeading? heading, int body) = HeadingAt(context, line, start);
        for (int i = Math.Max(body, start + 1); i < line.End; i++)
        {
            if (!CouldStartRow(context, i) || HeadingAt(context, line, i) is not ({ } next, var nextBody)) continue;
            yield return new Block(heading, start, body, i, line.AfterBlank);
            (heading, start, body) = (next, i, nextBody);
            i = nextBody - 1;
        }
        yield return new Block(heading, start, body, line.End, line.AfterBlank);
    }

    private static bool CouldStartRow(ReadingContext context, int i) =>
        (context.Tokens[i - 1].Kind is TokenKind.Dot or TokenKind.Close || HeadsOnLine(context, i)) && char.IsLetterOrDigit(context.Source.Content[context.Tokens[i].Span.Start])
        && !char.IsLower(context.Source.Content[context.Tokens[i].Span.Start]);

    /// <summary>'BODY: Rnd 1: …', 'SHAPE ARMHOLES: Next row: …', 'Size L only: Row 8: …': a heading before the row's own, on its line.</summary>
    private static bool HeadsOnLine(ReadingContext context, int i)
    {
        const int MostTokens = 10;
        if (context.Tokens[i - 1].Kind != TokenKind.Colon) return false;
        int start = LineStart(context, i - 1);
        return i - start <= MostTokens && (Headings.PieceHeadings.Take(new Cursor(context, start, i)) is not null || Statements.SizesOnly.TakeLine(new Cursor(context, start, i)) is not null);
    }

    private static (RowHeading?, int) HeadingAt(ReadingContext context, TextLine line, int at)
    {
        var cursor = new Cursor(context, at, line.End);
        RowHeading? heading = RowHeadings.Take(cursor, startsLine: at == line.Start);
        return (heading, heading is null ? at : cursor.At);
    }

    /// <summary>A line goes on with the one before where it begins in the middle of a sentence.</summary>
    private static bool GoesOn(ReadingContext context, Block before, TextLine line)
    {
        if (line.AfterBlank) return false;
        Token first = context.Tokens[line.Start], last = context.Tokens[before.End - 1];
        if (last.Kind is TokenKind.Comma or TokenKind.Semicolon) return true;
        char begins = context.Source.Content[first.Span.Start];
        if (char.IsLower(begins)) return !IsDefinition(context, line) && (before.Heading is not null || IsUnfinished(context, before));
        if (before.Heading is not null && (begins is '(' or '[' or '*' or '{' || first.Kind is TokenKind.Dash)) return true;
        int lineLength = last.Span.End - context.Tokens[LineStart(context, before.End - 1)].Span.Start;
        return before.Heading is not null && lineLength >= LongLine && last.Kind is TokenKind.Word or TokenKind.Number && !EndsWithCount(context, before) && !Statements.Instructions.StartAt(new Cursor(context, line.Start, line.End));
    }

    /// <summary>'… join. – 40 sts', '… join. - (60, 60) dc' where a size has none: the row is told to its end.</summary>
    private static bool EndsWithCount(ReadingContext context, Block before)
    {
        int dash = before.End - 1;
        while (dash > before.Body && context.Tokens[dash].Kind is not (TokenKind.Dash or TokenKind.Dot or TokenKind.Semicolon or TokenKind.Colon)) dash--;
        return dash > before.Body && (IsCount(dash + 1) || context.Tokens[dash].Kind == TokenKind.Dash && IsCount(dash));

        bool IsCount(int from) => Counts.StatedCounts.Whole(new Cursor(context, from, before.End), context.Source) is not null;
    }

    /// <summary>Prose goes on where its line is long and has no full stop.</summary>
    private static bool IsUnfinished(ReadingContext context, Block before)
    {
        Token last = context.Tokens[before.End - 1];
        return last.Kind is not (TokenKind.Dot or TokenKind.Colon) && last.Span.End - context.Tokens[LineStart(context, before.End - 1)].Span.Start >= LongLine / 2;
    }

    private static int LineStart(ReadingContext context, int token)
    {
        while (token > 0 && !context.Tokens[token].StartsLine) token--;
        return token;
    }

    /// <summary>'dc2tog: …' begins in lower case and is a line of its own.</summary>
    private static bool IsDefinition(ReadingContext context, TextLine line)
    {
        for (int i = line.Start; i < Math.Min(line.End, line.Start + 8); i++)
            if (context.Tokens[i].Kind is TokenKind.Colon or TokenKind.Equal) return true;
        return false;
    }
}
