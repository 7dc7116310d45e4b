using PatternStudio.Craft.Reading.Headings;
using PatternStudio.Craft.Reading.Statements;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.Lines;

/// <summary>Reads the blocks of a text in order into pieces, definitions and statements.</summary>
internal sealed class DocumentReader(ReadingContext context)
{
    private readonly List<Piece> pieces = [];
    private readonly List<PieceItem> items = [];
    private readonly List<Step> pending = [];
    private string pieceName = "";
    private SizedNumber? make;
    private int pieceStart;
    private EquatableArray<int> only;
    private bool onlyOnThisLine;

    public List<Piece> Pieces => pieces;

    public void Read(IEnumerable<Block> blocks)
    {
        Block[] all = [.. blocks];
        for (int i = 0; i < all.Length; i++) Read(all[i], i + 1 < all.Length ? all[i + 1] : null);
        EndPiece(context.Source.Content.Length);
    }

    private void Read(Block block, Block? following)
    {
        context.LineHasNoHeading = block.Heading is null;
        KeepSizes(block);
        var cursor = new Cursor(context, block.Body, block.End);
        if (block.Heading is not null && context.Tokens[block.Start].Span.Start < block.Heading.Span.Start) pending.Add(ColourBefore(cursor, block, block.Heading));
        if (block.Heading is not null)
            foreach (PieceItem item in RowReader.Read(cursor, block.Heading)) Add(item);
        else ReadLine(cursor, block, following);
    }

    /// <summary>'Sizes M and L only' holds until another word on sizes, another piece, or a row with a number for each size.</summary>
    private void KeepSizes(Block block)
    {
        bool over = onlyOnThisLine && context.Tokens[block.Start].StartsLine || !only.IsEmpty && SizeList.CoversAll(new Cursor(context, block.Body, block.End));
        if (over) (only, onlyOnThisLine) = ([], false);
        context.OnlySizes = block.Heading is { OnlySizes.IsEmpty: false } heading ? heading.OnlySizes : only;
    }

    /// <summary>'Sizes Child and Adult only:', 'All sizes:' before the rows that they speak of; on the same line, they speak of that line.</summary>
    private bool TakeSizes(Cursor cursor, Block block)
    {
        int from = cursor.At;
        if (SizesOnly.TakeLine(cursor) is not { } sizes) return false;
        only = sizes.Count == context.Sizes ? [] : sizes.ToEquatableArray();
        onlyOnThisLine = block.End < context.Tokens.Length && !context.Tokens[block.End].StartsLine || !cursor.AtEnd;
        context.OnlySizes = [];
        TextSpan span = cursor.SpanFrom(from);
        Add(new Passage(context.Source.Slice(span), IsRemark: true, span));
        context.OnlySizes = only;
        return true;
    }

    /// <summary>The yarn named before a row's label: 'Yellow: R1: …'.</summary>
    private static ColourStep ColourBefore(Cursor cursor, Block block, RowHeading heading)
    {
        TextSpan span = cursor.Span(block.Start, cursor.Context.TokenAt(heading.Span.Start));
        return new ColourStep(cursor.Context.Source.Slice(span).TrimEnd(' ', ':', ',', '-', '–', '—'), span);
    }

    private void ReadLine(Cursor cursor, Block block, Block? following)
    {
        if (TakeSizes(cursor, block) && cursor.AtEnd) return;
        context.Document.CloseSection(block.AfterBlank && PieceHeadings.Take(new Cursor(context, cursor.At, cursor.End)) is not null);
        bool openChain = Statements.Labels.StatesChainMultiple(cursor) && !(following is { Heading: null } next && MakesChain(next));
        if (FrontMatter(cursor, block))
        {
            // 'Ch a multiple of 6 + 2.' states the multiple; where no chain of a length follows, it is the foundation as well.
            if (openChain) foreach (PieceItem item in SampleChain(block) ?? [.. OpenFoundations.Take(new Cursor(context, block.Body, block.End))]) Add(item);
            return;
        }
        if (PieceHeadings.Take(cursor) is { } heading)
        {
            EndPiece(heading.Span.Start);
            only = context.OnlySizes = [];
            (pieceName, make, pieceStart) = (heading.Name, heading.Make, heading.Span.Start);
            if (cursor.AtEnd) return;
        }
        foreach (PieceItem item in LooseLines.Read(cursor)) Add(item);
    }

    /// <summary>True for 'Ch 32.', 'With A, ch 32.'.</summary>
    private bool MakesChain(Block block)
    {
        var cursor = new Cursor(context, block.Body, Math.Min(block.End, block.Body + 8));
        for (; !cursor.AtEnd; cursor.At++)
            if (cursor.Is(ChainOfLength)) return true;
        return false;
    }

    /// <summary>'Ch a multiple of 14 + 3. Sample: ch 59.', '… (I chained 35)': the chain that the rows' counts are of; null where the line has none.</summary>
    private List<PieceItem>? SampleChain(Block block)
    {
        for (var cursor = new Cursor(context, block.Body, block.End); !cursor.AtEnd; cursor.At++)
            if (cursor.Is(ChainOfLength) && cursor.Ahead(1).Value >= LooseLines.LongChain) return [.. LooseLines.Read(new Cursor(context, cursor.At, cursor.At + 2))];
        return null;
    }

    private static readonly Phrase ChainOfLength = new("ch #");

    /// <summary>A heading directly above an instruction names a piece; with a blank line after it, the first one is the title.</summary>
    private bool FrontMatter(Cursor cursor, Block block) => context.Document.Take(cursor, mayBeTitle: items.Count == 0 && !block.HeadsInstruction);

    /// <summary>Yarn and colours of a line of their own ('Change to B.') belong to the row that comes next.</summary>
    private void Add(PieceItem item)
    {
        if (!context.OnlySizes.IsEmpty && item is not Passage) item = item with { OnlySizes = context.OnlySizes };
        if (item is RowInstruction row && IsBeforeRow(row)) pending.AddRange(row.Steps);
        else if (item is RowInstruction next && pending.Count > 0)
        {
            items.Add(next with { Steps = pending.Concat(next.Steps).ToEquatableArray(), Span = pending[0].Span.Through(next.Span) });
            pending.Clear();
        }
        else
        {
            if (item is Passage passage) context.Document.AddNotes(passage, context);
            items.Add(item);
        }
    }

    private static bool IsBeforeRow(RowInstruction row) =>
        row.Heading.Text.Length == 0 && row.Steps.Any(step => step is ColourStep or AttachStep) && row.Steps.All(step => step is ColourStep or AttachStep or SkipStep or RemarkStep);

    private void EndPiece(int end)
    {
        if (items.Count > 0 || pieceName.Length > 0)
            pieces.Add(new Piece(pieceName, items.ToEquatableArray(), TextSpan.FromTo(pieceStart, end)) { Make = make });
        items.Clear();
        (pieceName, make) = ("", null);
    }
}
