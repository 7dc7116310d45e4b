using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>Marks before the lines of a list, and the marks by which plain text says 'heading' and 'bold'.</summary>
internal static partial class Bullets
{
    public static List<string> Drop(List<string> lines, Repairs repairs) => [.. lines.Select(line => Plain(line, repairs))];

    /// <summary>What was listed stays a list, with the dash that everybody can type: '- Yarn needle' is no heading. Stars open repeats: only before a row's number are they bullets.</summary>
    private static string Plain(string line, Repairs repairs)
    {
        string plain = Sign().Replace(line, "- ");
        plain = BeforeRow().Replace(plain, "");
        plain = Hashes().Replace(plain, "");
        plain = BoldRow().Replace(plain, "$1$2");
        if (plain != line) repairs.Note(RepairKind.Bullets);
        return plain;
    }

    [GeneratedRegex(@"^\s*[•‣◦▪▫●○■□➢➤❖✓✔\uf0b7\uf0a7\uf0d8]\s*")]
    private static partial Regex Sign();

    [GeneratedRegex(@"^\s*[*+–—-]\s+(?=(?:rows?|rnds?|rounds?)\s+\d)", RegexOptions.IgnoreCase)]
    private static partial Regex BeforeRow();

    [GeneratedRegex(@"^#{1,6}\s+(?=\p{L})")]
    private static partial Regex Hashes();

    /// <summary>'**Row 3:** …' and '__Rnd 4__: …'.</summary>
    [GeneratedRegex(@"^\s*(?:\*\*|__)((?:rows?|rnds?|rounds?)\s[^*_]{1,40}?)(?:\*\*|__)(:?)", RegexOptions.IgnoreCase)]
    private static partial Regex BoldRow();
}
