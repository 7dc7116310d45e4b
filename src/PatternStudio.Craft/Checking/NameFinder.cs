using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Finds where a name stands in a text, whatever its capitals, hyphens and plural: 'cl' in '3-dc cls', 'V-st' in 'v sts'.</summary>
internal sealed class NameFinder
{
    private readonly List<(string Word, TextSpan Span)> words = [];
    private readonly Dictionary<string, List<int>> places = new(StringComparer.Ordinal);

    public NameFinder(SourceText source)
    {
        foreach (TextSpan span in Words(source.Content))
        {
            string word = Usual(source.Slice(span));
            if (!places.TryGetValue(word, out List<int>? at)) places[word] = at = [];
            at.Add(words.Count);
            words.Add((word, span));
        }
    }

    /// <summary>Every place where all words of the name follow each other, in the order of the text.</summary>
    public IEnumerable<TextSpan> Find(string name)
    {
        string[] wanted = [.. Words(name).Select(span => Usual(name.Substring(span.Start, span.Length)))];
        if (wanted.Length == 0 || wanted.Any(word => !places.ContainsKey(word))) yield break;
        int rarest = Enumerable.Range(0, wanted.Length).MinBy(i => places[wanted[i]].Count);
        foreach (int start in places[wanted[rarest]].Select(place => place - rarest))
            if (Fits(start, wanted)) yield return words[start].Span.Through(words[start + wanted.Length - 1].Span);
    }

    private bool Fits(int start, string[] wanted)
    {
        if (start < 0 || start + wanted.Length > words.Count) return false;
        for (int i = 0; i < wanted.Length; i++)
            if (words[start + i].Word != wanted[i]) return false;
        return true;
    }

    /// <summary>Runs of letters and runs of digits: 'dc3tog' is three words.</summary>
    private static IEnumerable<TextSpan> Words(string text)
    {
        for (int at = 0; at < text.Length;)
        {
            int end = at;
            while (end < text.Length && char.IsLetter(text[end])) end++;
            if (end == at) while (end < text.Length && char.IsDigit(text[end])) end++;
            if (end > at) yield return TextSpan.FromTo(at, end);
            at = Math.Max(end, at + 1);
        }
    }

    private static string Usual(string word)
    {
        string lower = word.ToLowerInvariant();
        if (lower.Length > 4 && (lower.EndsWith("ches", StringComparison.Ordinal) || lower.EndsWith("shes", StringComparison.Ordinal))) return lower[..^2];
        return lower.Length > 2 && lower.EndsWith('s') && !lower.EndsWith("ss", StringComparison.Ordinal) ? lower[..^1] : lower;
    }
}
