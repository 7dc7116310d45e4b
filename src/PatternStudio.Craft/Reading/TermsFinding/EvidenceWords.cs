using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.TermsFinding;

/// <summary>
/// The words that exist in one terminology alone, or mostly there (<c>Terms/evidence.txt</c>): 'sc' and 'hdc' are US, 'htr' and 'miss' are UK.
/// </summary>
internal static class EvidenceWords
{
    private static readonly IReadOnlyList<(string[] Words, Terminology For, double Weight)> All = [.. Read()];

    /// <summary>Every evidence in the text; each phrase counts once in full and a tenth for every repetition.</summary>
    public static List<Evidence> In(SourceText source, Token[] tokens)
    {
        var byFirst = All.ToLookup(phrase => phrase.Words[0], StringComparer.Ordinal);
        string[] raw = [.. tokens.Select(token => token.Kind == TokenKind.Word ? source.Slice(token.Span).ToLowerInvariant() : "")];
        var found = new List<Evidence>();
        var seen = new HashSet<string[]>();
        for (int i = 0; i < raw.Length; i++)
            foreach ((string[] words, Terminology terminology, double weight) in byFirst[raw[i]])
                if (Fits(raw, i, words))
                    found.Add(new Evidence(terminology, seen.Add(words) ? weight : weight / 10, TextSpan.FromTo(tokens[i].Span.Start, tokens[i + words.Length - 1].Span.End)));
        return found;
    }

    private static bool Fits(string[] raw, int at, string[] words)
    {
        if (at + words.Length > raw.Length) return false;
        for (int i = 0; i < words.Length; i++)
            if (raw[at + i] != words[i]) return false;
        return true;
    }

    private static IEnumerable<(string[], Terminology, double)> Read()
    {
        foreach (string line in TermFiles.Lines("evidence.txt").Where(line => line.Length > 0))
        {
            (string key, string values) = TermFiles.Split(line);
            string[] parts = key.Split(' ');
            foreach (string value in TermFiles.List(values))
                yield return (value.Split(' '), parts[0] == "us" ? Terminology.Us : Terminology.Uk, double.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture));
        }
    }
}
