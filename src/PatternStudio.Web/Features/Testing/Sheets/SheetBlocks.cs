namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>What a block of the sheet is.</summary>
public enum SheetBlockKind
{
    Heading,
    Item,
    Words,

    /// <summary>A row, or several in one sentence: what a tester ticks off.</summary>
    Row,
}

/// <summary>How a number of a size list is shown.</summary>
public enum SizeMark
{
    /// <summary>No number of a size list.</summary>
    None,

    /// <summary>The number of the chosen size.</summary>
    Mine,

    /// <summary>The number of another size.</summary>
    Other,
}

/// <summary>Some words of a block, shown in one way.</summary>
public readonly record struct SheetWords(string Text, bool Bold, SizeMark Mark);

/// <summary>A line of the pattern as a tester reads it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Level">For headings: 2 to 4.</param>
/// <param name="Words">In order.</param>
public sealed record SheetBlock(SheetBlockKind Kind, int Level, IReadOnlyList<SheetWords> Words)
{
    /// <summary>For rows: 'Row 3', 'Rows 4 to 12', 'Border, Rnd 1'; what a remark is pinned to.</summary>
    public string Row { get; init; } = "";

    /// <summary>For rows: how many rows its words call for.</summary>
    public int Times { get; init; }

    /// <summary>For rows that state no count: the count as worked, at the end of the last of them; null where stated or not known.</summary>
    public long? Counted { get; init; }

    /// <summary>All words as one text.</summary>
    public string Text => string.Concat(Words.Select(words => words.Text));
}

/// <summary>A stitch that the rows use.</summary>
public sealed record NamedStitch(string Abbreviation, string Name);

/// <summary>A pattern as a tester reads it, in her size and terms.</summary>
/// <param name="Sizes">All sizes' names; one empty name where there is one.</param>
/// <param name="Size">0-based size shown.</param>
/// <param name="InUk">True where it is shown in UK terms.</param>
/// <param name="Blocks">Line by line.</param>
/// <param name="Stitches">The stitches that its rows use; special ones of the pattern are told in its words.</param>
/// <param name="HasChart">True where there is something to draw.</param>
public sealed record Sheet(IReadOnlyList<string> Sizes, int Size, bool InUk, IReadOnlyList<SheetBlock> Blocks, IReadOnlyList<NamedStitch> Stitches, bool HasChart)
{
    /// <summary>Rows that the words call for in all.</summary>
    public int RowsInAll => Blocks.Sum(block => block.Times);

    /// <summary>The rows by name, in order.</summary>
    public IEnumerable<string> Rows => Blocks.Where(block => block.Kind == SheetBlockKind.Row).Select(block => block.Row);
}
