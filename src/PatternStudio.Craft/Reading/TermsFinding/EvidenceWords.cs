using System.Collections.Frozen;
using PatternStudio.Craft.Reading.Tokens;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Reading.TermsFinding;

/// <summary>
/// The words that exist in one terminology alone, or mostly there (<c>Terms/evidence.txt</c>): 'sc' and 'hdc' are US, 'htr' and 'miss' are UK.
/// </summary>
internal static class EvidenceWords
{
    /// <summary>By their first word.</summary>
    private static readonly FrozenDictionary<string, EvidencePhrase[]> All =
        Read().GroupBy(phrase => phrase.Words[0], StringComparer.Ordinal).ToFrozenDictionary(group => group.Key, group => group.ToArray(), StringComparer.Ordinal);

    private sealed record EvidencePhrase(string[] Words, Terminology For, double Weight);

    /// <summary>Every evidence in the text; each phrase counts once in full and a tenth for every repetition.</summary>
    public static List<Evidence> In(Token[] tokens)
    {
        var found = new List<Evidence>();
        var seen = new HashSet<EvidencePhrase>(ReferenceEqualityComparer.Instance);
        for (int i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Kind != TokenKind.Word || !All.TryGetValue(tokens[i].Form.Written, out EvidencePhrase[]? phrases)) continue;
            foreach (EvidencePhrase phrase in phrases)
                if (Fits(tokens, i, phrase.Words))
                    found.Add(new Evidence(phrase.For, seen.Add(phrase) ? phrase.Weight : phrase.Weight / 10, TextSpan.FromTo(tokens[i].Span.Start, tokens[i + phrase.Words.Length - 1].Span.End)));
        }
        return found;
    }

    private static bool Fits(Token[] tokens, int at, string[] words)
    {
        if (at + words.Length > tokens.Length) return false;
        for (int i = 0; i < words.Length; i++)
            if (tokens[at + i].Kind != TokenKind.Word || tokens[at + i].Form.Written != words[i]) return false;
        return true;
    }

    private static IEnumerable<EvidencePhrase> Read()
    {
        foreach (string line in TermFiles.Lines("evidence.txt").Where(line => line.Length > 0))
        {
            (string key, string values) = TermFiles.Split(line);
            string[] parts = key.Split(' ');
            foreach (string value in TermFiles.List(values))
                yield return new EvidencePhrase(value.Split(' '), parts[0] == "us" ? Terminology.Us : Terminology.Uk, double.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture));
        }
    }
}
