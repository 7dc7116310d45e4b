using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Checking;

/// <summary>Which row of the text a place belongs to.</summary>
internal sealed class RowsOfText
{
    private readonly RowInstruction[] rows;
    private readonly PieceItem[] loose;

    public RowsOfText(Pattern pattern)
    {
        PieceItem[] items = [.. pattern.Pieces.SelectMany(piece => piece.Items).OrderBy(item => item.Span.Start)];
        rows = [.. items.OfType<RowInstruction>()];
        loose = [.. items.Where(item => item is Passage or RepeatRows { Until: RowsUntil.Measures or RowsUntil.StitchesRemain or RowsUntil.AsWished })];
    }

    /// <summary>True where between a row and the one before it words stand that may tell rows, but not how many: 'Continue in this way …'.</summary>
    public bool HasOpenRowsBefore(RowInstruction row)
    {
        int from = Before(row)?.Span.Start ?? 0;
        return loose.Any(item => item.Span.Start >= from && item.Span.Start < row.Span.Start);
    }

    /// <summary>True where rows are repeated before a row for as long as the maker wishes: which number comes next is open.</summary>
    public bool HasOpenRepeatBefore(RowInstruction row)
    {
        int from = Before(row)?.Span.Start ?? 0;
        return loose.Any(item => item is RepeatRows && item.Span.Start >= from && item.Span.Start < row.Span.Start);
    }

    /// <summary>The row whose words hold an offset; null outside rows.</summary>
    public RowInstruction? At(int offset)
    {
        int low = 0, high = rows.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (rows[middle].Span.Start <= offset) low = middle + 1;
            else high = middle;
        }
        return low > 0 && offset < rows[low - 1].Span.End ? rows[low - 1] : null;
    }

    /// <summary>The row before another; null for the first.</summary>
    public RowInstruction? Before(RowInstruction row) => Array.FindIndex(rows, other => ReferenceEquals(other, row)) is > 0 and int index ? rows[index - 1] : null;

    /// <summary>Every row before another.</summary>
    public IEnumerable<RowInstruction> AllBefore(RowInstruction row) => rows.TakeWhile(other => !ReferenceEquals(other, row));

    /// <summary>How the row at an offset is headed: 'Row 3'; empty outside rows and where it has no heading.</summary>
    public string NameAt(int offset) => At(offset) is { } row ? NameOf(row) : "";

    private static string NameOf(RowInstruction row)
    {
        string heading = row.Heading.Text;
        int aside = heading.IndexOf('(', StringComparison.Ordinal);
        return (aside > 0 ? heading[..aside] : heading).Trim(' ', '*', ':', '.', '-', '–', '—', '#', '\t', '\r', '\n');
    }
}
