using System.Globalization;
using System.Text;

namespace PatternStudio.Craft.Tests.Properties;

/// <summary>Spoils a text as slips of the hand, copying and hostile hands do: words lost, doubled and swapped, vast numbers, brackets, stray characters.</summary>
internal static class Mutation
{
    private static readonly string[] Numbers = ["0", "1", "2", "99", "1000", "65536", "1000000", "2147483647", "2147483648", "99999999999999999999", "-1", "1.5", "½", "(1, 2, 3)", "1–9999"];

    private static readonly string[] Scraps =
    [
        "(", ")", "[", "]", "*", "**", "((((((((", "))))))))", "[(*", ";", ":", ",", ".", "–", "\u0000", "\uFEFF", "\u202E", "\uD83D\uDE42", "\uD800", "İ", "ﬁ", "\t", "\r", "\r\n\r\n", "\u00A0", "Row 1:",
        "rep from *", "rep from * across", "across", "around", "turn", "join with sl st in first sc", "in next", "Rows 1–1000000:", "Rep Row 2.", "until piece measures 900000 cm", "until 0 sts remain", "1000000 times",
        "sc in next 1000000 sts", "[[[[sc] 1000 times] 1000 times] 1000 times] 1000 times", "shell = shell", "Special stitches:", "5 dc in each st across", "ch 1000000", "(S, M, L)", "Fasten off.",
    ];

    /// <summary>The text with one to eight slips in it.</summary>
    public static string Spoil(string text, Choices choices)
    {
        for (int slips = choices.Number(1, 8); slips > 0 && text.Length > 0; slips--) text = Slip(text, choices);
        return text;
    }

    private static string Slip(string text, Choices choices)
    {
        int at = choices.Number(0, text.Length - 1);
        (int start, int end) = WordAt(text, at);
        string word = text[start..end];
        return choices.Number(0, 11) switch
        {
            0 => text.Remove(start, end - start),
            1 => text.Insert(end, " " + word),
            2 => Swap(text, start, end, choices.Number(0, text.Length - 1)),
            3 or 4 => OtherNumber(text, at, choices.Of(Numbers)),
            5 => text.Remove(at, 1),
            6 => text[..at],
            7 => text.Insert(start, choices.Of(Scraps) + " "),
            8 => text.Insert(at, choices.Of(Scraps)),
            9 => Line(text, at, choices),
            10 => text.Insert(at, ((char)choices.Number(1, 0xFFFF)).ToString()),
            _ => text[..start] + Turned(word) + text[end..],
        };
    }

    private static (int Start, int End) WordAt(string text, int at)
    {
        int start = at, end = at;
        while (start > 0 && !char.IsWhiteSpace(text[start - 1])) start--;
        while (end < text.Length && !char.IsWhiteSpace(text[end])) end++;
        return (start, end);
    }

    private static string Swap(string text, int start, int end, int at)
    {
        (int otherStart, int otherEnd) = WordAt(text, at);
        if (otherStart >= start && otherStart <= end || otherEnd >= start && otherEnd <= end) return text;
        if (otherStart < start) (start, end, otherStart, otherEnd) = (otherStart, otherEnd, start, end);
        return text[..start] + text[otherStart..otherEnd] + text[end..otherStart] + text[start..end] + text[otherEnd..];
    }

    private static string OtherNumber(string text, int from, string number)
    {
        int at = text.AsSpan(from).IndexOfAnyInRange('0', '9') + from;
        if (at < from) return text;
        int end = at;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return text[..at] + number + text[end..];
    }

    /// <summary>A line once more, somewhere else or many times over.</summary>
    private static string Line(string text, int at, Choices choices)
    {
        int start = text.LastIndexOf('\n', Math.Max(0, at - 1)) + 1, end = text.IndexOf('\n', at);
        string line = text[start..(end < start ? text.Length : end)] + "\n";
        var many = new StringBuilder().Insert(0, line, choices.Of(1, 1, 2, 30));
        int to = text.IndexOf('\n', choices.Number(0, text.Length - 1)) + 1;
        return text.Insert(to, many.ToString());
    }

    private static string Turned(string word) => string.Create(CultureInfo.InvariantCulture, $"{(char.IsUpper(word.FirstOrDefault('a')) ? word.ToLowerInvariant() : word.ToUpperInvariant())}");
}
