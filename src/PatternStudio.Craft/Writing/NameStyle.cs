using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Writing;

/// <summary>How a stitch name is written, so that its other name is written alike: abbreviated or full, spaced, capitals, plural.</summary>
/// <param name="Written">As it stands in the text.</param>
internal sealed record NameStyle(string Written)
{
    private static readonly string[] LongWords =
    [
        "crochet", "treble", "double", "single", "half", "stitch", "triple", "plain", "long", "together", "quadruple", "front", "back", "post", "foundation", "extended",
    ];

    private readonly string[] words = Written.Split([' ', '-', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);

    public static NameStyle Of(string written) => new(written);

    /// <summary>The name that is most like the written one, in its capitals and number.</summary>
    /// <param name="names">The names to choose from, the usual ones first.</param>
    /// <param name="former">The names of the terminology it was written in.</param>
    public string Choose(EquatableArray<string> names, EquatableArray<string> former)
    {
        bool plural = IsPlural(former);
        NameStyle singular = plural ? Of(Singular(Written)) : this;
        int sameOrder = former.ToList().FindIndex(name => name.Equals(singular.Written, StringComparison.OrdinalIgnoreCase));
        string chosen = names.Select((name, index) => (name, index))
            .OrderByDescending(candidate => singular.Likeness(Of(candidate.name)))
            .ThenByDescending(candidate => candidate.index == sameOrder && singular.Ending == Of(candidate.name).Ending)
            .First().name;
        return Capitals(chosen) + (!plural ? "" : chosen.EndsWith("ch", StringComparison.OrdinalIgnoreCase) ? "es" : "s");
    }

    private static string Singular(string name) => name.EndsWith("ches", StringComparison.OrdinalIgnoreCase) ? name[..^2] : name[..^1];

    /// <summary>'dcs', 'double crochets': a name of the list with an s.</summary>
    private bool IsPlural(EquatableArray<string> former) =>
        Written.Length > 2 && Written[^1] == 's' && !former.Any(name => name.Equals(Written, StringComparison.OrdinalIgnoreCase));

    /// <summary>'half treble' is written in full, 'half dc' is not.</summary>
    private bool IsFull => words.Any(IsLong) && words.SkipLast(Ending.Length > 0 ? 1 : 0).All(word => IsLong(word) || word.Length > 4);

    private static bool IsLong(string word) => LongWords.Contains(word.TrimEnd('s').ToLowerInvariant());

    /// <summary>'single crochet stitch' ends in words that its other name can end in too.</summary>
    private string Ending => words[^1].ToLowerInvariant() is "crochet" or "stitch" or "st" or "c" or "together" ? words[^1].ToLowerInvariant() : "";

    private int Likeness(NameStyle other) =>
        (IsFull == other.IsFull ? 8 : 0)
        + ((words.Length > 1) == (other.words.Length > 1) ? 4 : 0)
        + (Ending == other.Ending ? 2 : 0)
        + (words.Length == other.words.Length ? 1 : 0);

    /// <summary>'Dc' becomes 'Tr', 'DC' becomes 'TR'; 'FPdc' keeps the list's own capitals.</summary>
    private string Capitals(string name)
    {
        bool anyUpper = Written.Any(char.IsUpper), anyLower = Written.Any(char.IsLower);
        if (anyUpper && !anyLower) return name.ToUpperInvariant();
        if (!anyUpper) return name.ToLowerInvariant();
        bool firstOnly = char.IsUpper(Written[0]) && !Written.Skip(1).Any(char.IsUpper);
        if (firstOnly) return char.ToUpperInvariant(name[0]) + name[1..].ToLowerInvariant();
        return words.Length > 1 && words.All(word => char.IsUpper(word[0])) ? string.Join(' ', name.Split(' ').Select(Capitalised)) : name;
    }

    private static string Capitalised(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
