using System.Text.RegularExpressions;

namespace PatternStudio.Craft.Reading.Pasting;

/// <summary>Page numbers, and the lines that stand at the head or foot of every page.</summary>
internal static partial class PageFurniture
{
    /// <summary>So many written lines away from a page's end a head or foot may stand.</summary>
    private const int Near = 2;

    public static List<string> Drop(List<string> lines, Repairs repairs)
    {
        lines = [.. lines.SelectMany(line => line.Contains('\f') ? Parted(line) : [line])];
        bool[] ends = Ends(lines);
        if (!ends.Any(end => end)) return lines;
        HashSet<string> heads = Heads(lines, ends);
        var kept = new List<string>();
        var seen = new HashSet<string>();
        for (int i = 0; i < lines.Count; i++)
        {
            string key = Key(lines[i]);
            if (lines[i] == "\f") kept.Add("");
            else if (ends[i]) repairs.Drop(RepairKind.PageNumbers, lines[i]);
            // Where it stands first it is mostly the pattern's title.
            else if (heads.Contains(key) && !seen.Add(key)) repairs.Drop(RepairKind.PageHeads, lines[i]);
            else kept.Add(lines[i]);
        }

        return kept;
    }

    private static IEnumerable<string> Parted(string line) =>
        line.Split('\f').SelectMany((part, at) => at == 0 ? [part] : new[] { "\f", part }).Where(part => part.Trim(' ').Length > 0);

    /// <summary>Where pages end: form feeds, 'Page 2 of 5', and numbers alone on a line that count on.</summary>
    private static bool[] Ends(List<string> lines)
    {
        bool[] ends = [.. lines.Select(line => line == "\f" || PageNumber().IsMatch(line))];
        int[] alone = [.. Enumerable.Range(0, lines.Count).Where(at => Alone().IsMatch(lines[at]))];
        int[] numbers = [.. alone.Select(at => int.Parse(Alone().Match(lines[at]).Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture))];
        if (numbers.Length >= 2 && numbers.Zip(numbers.Skip(1)).All(pair => pair.Second == pair.First + 1))
            foreach (int at in alone) ends[at] = true;
        return ends;
    }

    /// <summary>Lines (numbers in them set aside) that stand near the ends of two pages or more, and are no part of the work.</summary>
    private static HashSet<string> Heads(List<string> lines, bool[] ends)
    {
        var places = new Dictionary<string, HashSet<int>>();
        int[] pages = [-1, .. Enumerable.Range(0, lines.Count).Where(at => ends[at]), lines.Count];
        foreach (int page in pages)
            foreach (int step in new[] { -1, 1 })
                foreach (string line in Written(lines, ends, page, step).Where(line => !Work().IsMatch(line)))
                {
                    if (!places.TryGetValue(Key(line), out HashSet<int>? at)) places[Key(line)] = at = [];
                    at.Add(page);
                }

        return [.. places.Where(place => place.Value.Count >= 2).Select(place => place.Key)];
    }

    private static IEnumerable<string> Written(List<string> lines, bool[] ends, int from, int step)
    {
        int found = 0;
        for (int at = from + step; at >= 0 && at < lines.Count && found < Near; at += step)
        {
            if (string.IsNullOrWhiteSpace(lines[at]) || ends[at]) continue;
            found++;
            yield return lines[at];
        }
    }

    private static string Key(string line) => Digits().Replace(line.Trim(), "0");

    [GeneratedRegex(@"^\s*[-–—|]*\s*(?:page|pg\.?|p\.)\s*[0-9]{1,3}(?:\s*(?:of|/)\s*[0-9]{1,3})?\s*[-–—|]*\s*$|^\s*[-–—]\s*[0-9]{1,3}\s*[-–—]\s*$|^\s*[0-9]{1,3}\s*(?:/|of)\s*[0-9]{1,3}\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex PageNumber();

    [GeneratedRegex(@"^\s*([0-9]{1,3})\s*$")]
    private static partial Regex Alone();

    /// <summary>Lines of the work may well come twice: 'Rep Row 2.', 'Fasten off.', 'Ch 1, turn.'.</summary>
    [GeneratedRegex(@"^\W*(?:rows?|rnds?|rounds?|r[0-9]|next|rep|repeat|work|fasten|join|ch|sc|dc|hdc|tr|sl|turn|with|weave|finish|cut|make|sew)\b|[.)\]]\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Work();

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();
}
