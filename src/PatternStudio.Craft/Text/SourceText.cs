namespace PatternStudio.Craft.Text;

/// <summary>
/// The pattern as the designer wrote it, with its line starts. Positions turn into human coordinates here and nowhere else.
/// </summary>
public sealed class SourceText
{
    private readonly int[] lineStarts;

    /// <summary>Takes the text as it is: line ends may be LF, CRLF or CR.</summary>
    public SourceText(string content)
    {
        ArgumentNullException.ThrowIfNull(content);
        Content = content;
        lineStarts = [.. FindLineStarts(content)];
    }

    /// <summary>The whole text, unchanged.</summary>
    public string Content { get; }

    /// <summary>Number of lines; an empty text has one.</summary>
    public int LineCount => lineStarts.Length;

    /// <summary>The words under a span.</summary>
    public string Slice(TextSpan span) => Content.Substring(span.Start, span.Length);

    /// <summary>The 1-based line and column of an offset.</summary>
    public LinePosition Locate(int offset)
    {
        int found = Array.BinarySearch(lineStarts, offset);
        int line = found >= 0 ? found : ~found - 1;
        return new LinePosition(line + 1, offset - lineStarts[line] + 1);
    }

    /// <summary>The span of a line without its line end.</summary>
    /// <param name="line">1-based.</param>
    public TextSpan Line(int line)
    {
        int start = lineStarts[line - 1];
        int end = line < lineStarts.Length ? lineStarts[line] : Content.Length;
        while (end > start && Content[end - 1] is '\n' or '\r') end--;
        return TextSpan.FromTo(start, end);
    }

    private static List<int> FindLineStarts(string content)
    {
        List<int> starts = [0];
        for (int at = 0; content.AsSpan(at).IndexOfAny('\n', '\r') is >= 0 and int next;)
        {
            at += next;
            at += content[at] == '\r' && at + 1 < content.Length && content[at + 1] == '\n' ? 2 : 1;
            starts.Add(at);
        }
        return starts;
    }
}
