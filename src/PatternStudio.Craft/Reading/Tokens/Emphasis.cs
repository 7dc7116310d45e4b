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
            '*' when IsBullet(at) => 1,
            _ when IsOrnament(text[at]) => 1,
            '*' or '_' => Opening(at),
            _ => 0,
        };
    }

    /// <summary>'●', '✓' and the like before a line.</summary>
    private static bool IsOrnament(char mark) =>
        char.GetUnicodeCategory(mark) is System.Globalization.UnicodeCategory.OtherSymbol && Marks.KindOf(mark) == TokenKind.Other || mark is '‣' or '◦' or '▪' or '●' or '■' or '○' or '♥';

    /// <summary>'* Use a stitch marker.': a star and a blank before each of several lines, in which nothing repeats from it.</summary>
    private bool IsBullet(int at)
    {
        if (at + 1 >= end || text[at + 1] != ' ') return false;
        int stop = LineEnd(at);
        ReadOnlySpan<char> line = text.AsSpan(at + 1, stop - at - 1);
        return !line.Contains('*') && !line.Contains("rep", StringComparison.OrdinalIgnoreCase) && (BeginsWithStar(NextLine(stop)) || BeginsWithStar(LineBefore(at)));
    }

    private bool BeginsWithStar(int at) => at >= 0 && at + 1 < end && text[at] == '*' && text[at + 1] == ' ';

    private int LineEnd(int at) => text.IndexOfAny(['\n', '\r'], at, end - at) is >= 0 and int line ? line : end;

    private int NextLine(int stop)
    {
        while (stop < end && char.IsWhiteSpace(text[stop])) stop++;
        return stop < end ? stop : -1;
    }

    private int LineBefore(int at)
    {
        int last = at - 1;
        while (last >= 0 && char.IsWhiteSpace(text[last])) last--;
        if (last < 0) return -1;
        int start = text.LastIndexOfAny(['\n', '\r'], last) + 1;
        while (start < last && text[start] is ' ' or '\t') start++;
        return start;
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
