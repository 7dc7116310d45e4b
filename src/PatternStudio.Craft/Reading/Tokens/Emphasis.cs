namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// Knows the marks that only make letters bold: <c>**Row 1:**</c> at the start of a line, <c>#</c> and <c>-</c> before a heading or a list item.
/// A double star is also a repeat mark, so it is emphasis only in pairs around a label.
/// </summary>
internal sealed class Emphasis(string text, int end)
{
    private int closing = -1;

    /// <summary>How many characters to pass over here; 0 where this is no emphasis.</summary>
    public int LengthAt(int at, bool startsLine)
    {
        if (at == closing) return Run(at, text[at]);
        if (!startsLine) return 0;
        return text[at] switch
        {
            '#' => Run(at, '#'),
            '-' or '•' or '·' when at + 1 < end && text[at + 1] == ' ' => 1,
            '*' or '_' => Opening(at),
            _ => 0,
        };
    }

    private int Opening(int at)
    {
        char mark = text[at];
        int length = Run(at, mark);
        if (length is < 1 or > 3 || (length == 1 && mark == '*' && at + 1 < end && text[at + 1] == ' ') || at + length >= end || !char.IsLetterOrDigit(text[at + length])) return 0;
        int line = text.IndexOfAny(['\n', '\r'], at);
        int stop = line < 0 || line > end ? end : line;
        int close = text.IndexOf(new string(mark, length), at + length, stop - at - length, StringComparison.Ordinal);
        if (close < 0 || Run(close, mark) != length || !IsLabel(at + length, close, close + length, stop)) return 0;
        closing = close;
        return length;
    }

    /// <summary>Bold words are a label where they end in a colon or full stop, are followed by one, or are the whole line.</summary>
    private bool IsLabel(int start, int close, int after, int stop)
    {
        if (text[close - 1] is ':' or '.') return true;
        if (after < stop && text[after] is ':') return true;
        return text.AsSpan(after, stop - after).IsWhiteSpace() && !text.AsSpan(start, close - start).Contains(',');
    }

    private int Run(int at, char mark)
    {
        int length = 0;
        while (at + length < end && text[at + length] == mark) length++;
        return length;
    }
}
