using PatternStudio.Craft.Reading.Tokens;

namespace PatternStudio.Craft.Reading.Steps;

/// <summary>Finds the phrase that unread words are nearest to, as an example of what can be read.</summary>
internal static class NearestPhrase
{
    /// <summary>Telling words, and a phrase that begins with them.</summary>
    private static readonly (string Word, string Example)[] Examples =
    [
        ("rep", "rep from * across"), ("skip", "skip next st"), ("join", "join with sl st to first sc"), ("ch", "ch 3"), ("ring", "6 sc in ring"),
        ("turn", "ch 1, turn"), ("change", "change to B"), ("attach", "join A in any ch-2 sp"), ("row", "rep Row 2"), ("rnd", "rep Rnd 2"),
        ("each", "sc in each st across"), ("next", "sc in next st"), ("same", "dc in same st"), ("tog", "sc2tog over next 2 sts"),
        ("inc", "2 sc in next st"), ("dec", "sc2tog"), ("sp", "dc in next ch-2 sp"), ("st", "sc in next st"), ("loop", "sc in back loop only of next st"),
    ];

    public static string? To(Cursor cursor, int from)
    {
        for (int i = from; i < cursor.At; i++)
        {
            Token token = cursor.Context.Tokens[i];
            foreach ((string word, string example) in Examples)
                if (token.Kind == TokenKind.Word && (token.Word == word || IsSlipOfThePen(token.Word, word)))
                    return example;
        }
        return null;
    }

    /// <summary>One letter wrong, missing, added or swapped with its neighbour.</summary>
    private static bool IsSlipOfThePen(string written, string meant)
    {
        if (meant.Length < 4 || Math.Abs(written.Length - meant.Length) > 1) return false;
        int head = 0;
        while (head < Math.Min(written.Length, meant.Length) && written[head] == meant[head]) head++;
        int tail = 0;
        while (tail < Math.Min(written.Length, meant.Length) - head && written[^(tail + 1)] == meant[^(tail + 1)]) tail++;
        int wrong = Math.Max(written.Length, meant.Length) - head - tail;
        return wrong <= 1 || (wrong == 2 && written.Length == meant.Length && written[head] == meant[head + 1] && written[head + 1] == meant[head]);
    }
}
