using System.Text;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>Signs that printers and word processors set in place of plain ones.</summary>
internal static class Characters
{
    private static readonly Dictionary<char, string> Ligatures = new()
    {
        ['ﬀ'] = "ff", ['ﬁ'] = "fi", ['ﬂ'] = "fl", ['ﬃ'] = "ffi", ['ﬄ'] = "ffl", ['ﬅ'] = "st", ['ﬆ'] = "st",
    };

    private static readonly Dictionary<char, string> Fractions = new()
    {
        ['½'] = "1/2", ['¼'] = "1/4", ['¾'] = "3/4", ['⅓'] = "1/3", ['⅔'] = "2/3", ['⅛'] = "1/8", ['⅜'] = "3/8", ['⅝'] = "5/8", ['⅞'] = "7/8",
        ['⅕'] = "1/5", ['⅖'] = "2/5", ['⅗'] = "3/5", ['⅘'] = "4/5", ['⅙'] = "1/6", ['⅚'] = "5/6",
    };

    /// <summary>A form feed stays: it tells where a page ends.</summary>
    public static string Plain(string text, Repairs repairs)
    {
        var plain = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            char sign = text[i];
            if (sign is '\n' or '\f' || sign is >= ' ' and < '\u007f') plain.Append(sign);
            else if (sign == '\u00ad') i += SoftHyphen(text, i, repairs);
            else if (Ligatures.TryGetValue(sign, out string? letters)) Put(letters, RepairKind.Ligatures);
            else if (Fractions.TryGetValue(sign, out string? fraction)) Put(plain.Length > 0 && char.IsAsciiDigit(plain[^1]) ? " " + fraction : fraction, RepairKind.Fractions);
            else if (sign == '\u2044') Put("/", RepairKind.Fractions);
            else if (sign == '\u2011') Put("-", RepairKind.Spaces);
            else if (sign == '\t' || char.IsWhiteSpace(sign) && sign is not ('\u0085' or '\u2028' or '\u2029' or '\v')) Put(" ", RepairKind.Spaces);
            else if (char.IsWhiteSpace(sign)) plain.Append('\n');
            else if (IsInvisible(sign)) repairs.Note(RepairKind.Invisible);
            else plain.Append(sign);
        }

        return plain.ToString();

        void Put(string signs, RepairKind kind)
        {
            plain.Append(signs);
            repairs.Note(kind);
        }
    }

    /// <summary>A soft hyphen at the end of a line parts a word: the line's end goes with it. Gives how many characters more are passed over.</summary>
    private static int SoftHyphen(string text, int at, Repairs repairs)
    {
        repairs.Note(RepairKind.SoftHyphens);
        int next = at + 1;
        while (next < text.Length && text[next] == ' ') next++;
        return next < text.Length - 1 && text[next] == '\n' && char.IsLower(text[next + 1]) ? next - at : 0;
    }

    private static bool IsInvisible(char sign) =>
        char.IsControl(sign) || sign is >= '\u200b' and <= '\u200f' or >= '\u202a' and <= '\u202e' or >= '\u2060' and <= '\u2064' or '\ufeff' or '\ufffc';
}
