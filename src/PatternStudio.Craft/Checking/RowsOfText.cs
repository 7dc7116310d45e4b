using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Checking;

/// <summary>Which row of the text a place belongs to.</summary>
internal sealed class RowsOfText
{
    private readonly RowInstruction[] rows;

    public RowsOfText(Pattern pattern) =>
        rows = [.. pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().OrderBy(row => row.Span.Start)];

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
