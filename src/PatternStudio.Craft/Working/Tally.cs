using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>What a row's runs come to: stitches in all, by kind, and spaces by length.</summary>
internal sealed class Tally
{
    private readonly Dictionary<string, long> counts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, long> groups = new(StringComparer.Ordinal);
    private readonly SortedDictionary<int, long> spaces = [];
    private readonly EquatableArray<Run> runs;
    private readonly Conventions conventions;
    private readonly HashSet<string> whole;
    private EquatableArray<KeyValuePair<string, long>>? listed, listedSpaces;
    private Tally? counting;

    /// <param name="runs">The row.</param>
    /// <param name="conventions">What counts.</param>
    /// <param name="whole">Groups that the row counts as one each ('10 V-sts, 4 dc'): their stitches are not counted beside them.</param>
    public Tally(EquatableArray<Run> runs, Conventions conventions, IEnumerable<string>? whole = null)
    {
        (this.runs, this.conventions, this.whole) = (runs, conventions, [.. whole ?? []]);
        foreach (Run run in runs)
            foreach (Cell cell in run.Unit)
                Add(cell, run.Times);
    }

    /// <summary>The same row with these groups counted as one each. Rows that come again ask for the same groups: the last answer is kept.</summary>
    public Tally Counting(IReadOnlyCollection<string> groups) =>
        counting?.whole.SetEquals(groups) == true ? counting : counting = new Tally(runs, conventions, groups);

    /// <summary>Stitches in all, by the pattern's convention.</summary>
    public long Total { get; private set; }

    /// <summary>Single chains between stitches, counted or not.</summary>
    public long Chains { get; private set; }

    public long SpaceCount => spaces.Values.Sum();

    public EquatableArray<KeyValuePair<string, long>> Counts => listed ??=
        ByName(counts).Concat(ByName(groups.Where(group => !counts.ContainsKey(group.Key)))).ToEquatableArray();

    public EquatableArray<KeyValuePair<string, long>> Spaces => listedSpaces ??=
        spaces.Select(space => KeyValuePair.Create($"ch-{space.Key}", space.Value)).ToEquatableArray();

    /// <summary>How many of a stitch or of a named group; null where the row has none.</summary>
    public long? Of(string name) =>
        counts.TryGetValue(name, out long stitches) ? stitches : groups.TryGetValue(name, out long made) ? made : null;

    /// <summary>True where the row has groups of that name that are no single stitches.</summary>
    public bool IsGroup(string name) => groups.ContainsKey(name) && !counts.ContainsKey(name);

    public long SpacesOf(int chains) => spaces.GetValueOrDefault(chains);

    /// <summary>The only kind of stitch in the row; null where there are several.</summary>
    public string? OnlyKind => counts.Count == 1 ? counts.Keys.First() : null;

    /// <summary>The plain stitch that all stitches of the row are forms of: sc for sc and sc2tog; null where there are several.</summary>
    public string? OnlyBase => OnlyKind ?? (counts.Keys.Select(BaseOf).Distinct().ToArray() is [var one] ? one : null);

    private static string BaseOf(string stitch) =>
        Terms.Vocabulary.Standard.Find(new(stitch)) is { } term ? term.Base.Value : stitch;

    /// <summary>Counts under a plain stitch, its other forms included: 'dc' with its post stitches.</summary>
    public long OfForms(string named) =>
        counts.Where(count => Places.Matches(new(count.Key), new(named))).Sum(count => count.Value);

    /// <summary>A beginning popcorn or cluster is counted with the others, and so is a stitch that begins a row without a chain ('standing sc').</summary>
    private static string Plain(string stitch) =>
        stitch.StartsWith("st-", StringComparison.Ordinal) ? stitch["st-".Length..] : stitch.StartsWith("beg", StringComparison.Ordinal) && stitch.Length > 4 ? stitch["beg".Length..] : stitch;

    private static IEnumerable<KeyValuePair<string, long>> ByName(IEnumerable<KeyValuePair<string, long>> pairs) => pairs.OrderBy(pair => pair.Key, StringComparer.Ordinal);

    private void Add(Cell cell, long times)
    {
        if (cell.Group is { } counted && whole.Contains(counted.Value))
        {
            if (cell.GroupIndex == 0) Total += times;
        }
        else if (cell.Counts)
        {
            Total += times;
            string name = Plain(cell.Stitch.Value);
            counts[name] = counts.GetValueOrDefault(name) + times;
        }
        if (cell.Kind == CellKind.Picot) groups["picot"] = groups.GetValueOrDefault("picot") + times;
        if (cell is { Group: { } group, GroupIndex: 0, GroupSize: > 0 })
            groups[group.Value] = groups.GetValueOrDefault(group.Value) + times;
        if (cell.Kind == CellKind.Chains)
        {
            if (!cell.GoesOn) spaces[cell.Chains] = spaces.GetValueOrDefault(cell.Chains) + times;
            Chains += cell.Chains * times;
            if (conventions.ChainsAreStitches) Total += cell.Chains * times;
        }
    }
}
