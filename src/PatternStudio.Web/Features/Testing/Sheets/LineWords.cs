using System.Text.RegularExpressions;

namespace PatternStudio.Web.Features.Testing.Sheets;

/// <summary>Divides a line into words that are shown alike: a bold label, the numbers of the chosen size, the rest.</summary>
/// <param name="sizes">How many sizes the pattern has.</param>
/// <param name="size">0-based size chosen.</param>
internal sealed partial class LineWords(int sizes, int size)
{
    private readonly Regex? list = sizes < 2 ? null : new Regex(
        $@"(?<![\d.,/])(?<n>\d[\d½¼¾⅓⅔.,/]*(?:\s[½¼¾])?)\s?[(\[](?:\s*(?<n>[-–—]|\d[\d½¼¾⅓⅔./]*(?:\s[½¼¾])?)\s*(?:,|(?=[)\]]))){{{sizes - 1}}}[)\]]", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));

    public IReadOnlyList<SheetWords> Divide(string line) => Divide(Bold(line));

    /// <summary>A row: its name, 'Row 3:', is what a finger looks for, and bold whether or not the designer wrote it so.</summary>
    public IReadOnlyList<SheetWords> DivideRow(string line) => Divide(RowName().Match(line) is { Success: true } name ? [(name.Value, true), (line[name.Length..], false)] : Bold(line));

    private List<SheetWords> Divide(IEnumerable<(string Text, bool Bold)> parts)
    {
        var words = new List<SheetWords>();
        foreach ((string text, bool bold) in parts) Mark(words, text, bold);
        return words;
    }

    /// <summary>
    /// '**Row 2:**' is a bold label, and '**' elsewhere a mark that repeats are counted from: bold are only words at the beginning that end with a colon or a full stop, or a line
    /// that is bold as a whole.
    /// </summary>
    private static IEnumerable<(string Text, bool Bold)> Bold(string line)
    {
        Match label = Label().Match(line);
        if (!label.Success) return [(line, false)];
        string rest = line[label.Length..];
        return rest.Length > 0 ? [(label.Groups["label"].Value, true), (rest, false)] : [(label.Groups["label"].Value, true)];
    }

    private void Mark(List<SheetWords> words, string text, bool bold)
    {
        int at = 0;
        foreach (Match found in list?.Matches(text) ?? Enumerable.Empty<Match>())
            foreach ((Capture number, int place) in found.Groups["n"].Captures.Select((number, place) => (number, place)))
            {
                Add(words, text[at..number.Index], bold, SizeMark.None);
                Add(words, number.Value, bold, place == size ? SizeMark.Mine : SizeMark.Other);
                at = number.Index + number.Length;
            }

        Add(words, text[at..], bold, SizeMark.None);
    }

    private static void Add(List<SheetWords> words, string text, bool bold, SizeMark mark)
    {
        if (text.Length > 0) words.Add(new SheetWords(text, bold, mark));
    }

    [GeneratedRegex(@"^(?:rows?|rnds?|rounds?)\s+\d[^:*]{0,30}:", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex RowName();

    [GeneratedRegex(@"^\*\*(?<label>[^\s*](?:[^*]*[:.]|[^*]*(?=\*\*$)))\*\*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Label();
}
