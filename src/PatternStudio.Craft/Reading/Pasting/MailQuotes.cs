using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>What a mail program puts round a pattern that was sent.</summary>
internal static partial class MailQuotes
{
    public static List<string> Drop(List<string> lines, Repairs repairs)
    {
        bool quoted = lines.Count(line => Quote().IsMatch(line)) >= 2;
        var kept = new List<string>();
        for (int i = 0; i < lines.Count; i++)
        {
            string line = lines[i];
            Match quote = Quote().Match(line);
            if (quoted && quote.Success)
            {
                repairs.Note(RepairKind.MailQuotes);
                line = line[quote.Length..];
            }

            if (Dividing().IsMatch(line) || (quoted && Wrote().IsMatch(line)) || IsHead(lines, i)) repairs.Drop(RepairKind.MailHeads, line);
            else kept.Add(line);
        }

        return kept;
    }

    /// <summary>'From:' alone may begin a sentence; two such lines together are the head of a mail.</summary>
    private static bool IsHead(List<string> lines, int at) =>
        Head().IsMatch(lines[at]) && ((at > 0 && Head().IsMatch(lines[at - 1])) || (at + 1 < lines.Count && Head().IsMatch(lines[at + 1])));

    [GeneratedRegex(@"^ ?(?:> ?)+")]
    private static partial Regex Quote();

    [GeneratedRegex(@"^\s*-{2,}\s*(?:original message|forwarded message|forwarded by .*)\s*-{2,}\s*$|^\s*begin forwarded message:\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Dividing();

    [GeneratedRegex(@"^\s*On .{6,160}\bwrote:\s*$")]
    private static partial Regex Wrote();

    [GeneratedRegex(@"^(?:> ?)*\s*(?:From|To|Cc|Bcc|Sent|Date|Subject|Reply-To): ?\S")]
    private static partial Regex Head();
}
