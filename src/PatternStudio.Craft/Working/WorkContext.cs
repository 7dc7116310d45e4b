using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Working;

/// <summary>What holds for a whole pattern while one size of it is worked.</summary>
internal sealed class WorkContext
{
    private readonly Dictionary<StitchId, StitchDefinition> definitions = [];
    private readonly Dictionary<StitchId, StitchTraits> traits = [];
    private readonly Dictionary<int, bool> toldTurningChains = [];

    private readonly bool? toldOfAll;

    public WorkContext(Pattern pattern, int size, Conventions conventions, bool unroll)
    {
        (Pattern, Size, Conventions, Unroll) = (pattern, size, conventions, unroll);
        foreach (StitchDefinition definition in pattern.Definitions)
            if (!MentionsItself(definition)) definitions.TryAdd(definition.Id, definition);
        foreach (GroupStep named in pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>().SelectMany(row => GroupsIn(row.Steps)))
            if (namedGroups.TryAdd(named.Named!.Value, named.Steps)) definitions.TryAdd(named.Named.Value, new StitchDefinition(named.Named.Value, [named.Named.Value.Value], named.Span) { Steps = named.Steps });
        foreach (StitchDefinition definition in definitions.Values)
            if (MembersOf(definition) is { Count: > 1 } members) namedGroups.TryAdd(definition.Id, members);
        foreach (Statement statement in pattern.Statements)
            if (statement.TurningChain is { Chains: > 0 } told) toldTurningChains[told.Chains] = told.Counts;
            else if (statement.TurningChain is { } any) toldOfAll = any.Counts;
    }

    /// <summary>'2 dc, ch 2, 2 dc (shell) in next loop': groups named on the way are stitches that later rows name.</summary>
    private static IEnumerable<GroupStep> GroupsIn(IEnumerable<Step> steps) => steps.SelectMany(step => step switch
    {
        GroupStep { Named: not null } group when group.Steps.All(inner => inner is StitchStep or ChainStep or RemarkStep) => [group],
        RepeatStep repeat => GroupsIn(repeat.Steps.Concat(repeat.Ending)),
        _ => Enumerable.Empty<GroupStep>(),
    });

    public Pattern Pattern { get; }

    public int Size { get; }

    public Conventions Conventions { get; }

    /// <summary>True where every repeat is worked turn by turn: the reference that working by runs is compared with.</summary>
    public bool Unroll { get; }

    /// <summary>True where a row works the stitch: 'shell in next sc'.</summary>
    public bool Works(StitchId stitch) => (worked ??= FindWorked()).Contains(stitch);

    private HashSet<StitchId>? worked;

    private HashSet<StitchId> FindWorked() => [.. TreeSteps.OfRows(Pattern).OfType<StitchStep>().Select(step => step.Stitch)];

    /// <summary>Groups that the pattern's stated counts name ('5 shells'): rows that state nothing count them as one each as well.</summary>
    public IReadOnlySet<string> GroupsStated => groupsStated ??= FindGroupsStated();

    private HashSet<string>? groupsStated;

    /// <summary>True where the pattern calls chains that end where they began 'picot loop'.</summary>
    public bool NamesPicotLoops => namesPicotLoops ??= Pattern.Source.Content.Contains("picot loop", StringComparison.OrdinalIgnoreCase);

    private bool? namesPicotLoops;

    private HashSet<string> FindGroupsStated() =>
        [.. Pattern.Pieces.SelectMany(piece => piece.Items).OfType<RowInstruction>()
            .SelectMany(row => row.Stated?.Items ?? [])
            .Where(item => item.Thing is CountedThing.Groups or CountedThing.Stitch && item.Kind?.Stitch is not null)
            .Select(item => item.Kind!.Stitch!.Value.Value)];

    /// <summary>More than any pattern takes, in steps worked and cells kept: a text made to grow without end is refused, not waited for.</summary>
    private const long MostInAll = 3_000_000;

    private long spent;

    /// <summary>True where a row that has come so far is one too many.</summary>
    public bool IsSpent(long inThisRow) => !Unroll && spent + inThisRow > MostInAll;

    /// <summary>Counts what a row took.</summary>
    public void Spend(long inThisRow) => spent += inThisRow;

    /// <summary>What does not come out so far: mishaps, and rows in doubt because of them.</summary>
    public int Trouble { get; private set; }

    /// <summary>Trouble from which on working on is of no use: other conventions have come out as well already. Null to work to the end.</summary>
    public int? EnoughTrouble { get; init; }

    /// <summary>True where the pattern comes out no better with these conventions than with others tried before.</summary>
    public bool IsBeaten => Trouble >= EnoughTrouble;

    /// <summary>Counts a mishap, or a row that is in doubt.</summary>
    public void Falter() => Trouble++;

    /// <summary>The name of a group that is worked without naming it: the same stitches as one that the pattern has named.</summary>
    public StitchId? NameOf(EquatableArray<Step> group)
    {
        foreach ((StitchId name, EquatableArray<Step> steps) in namedGroups)
            if (steps.Count == group.Count && steps.Zip(group).All(pair => IsSame(pair.First, pair.Second))) return name;
        return null;
    }

    private readonly Dictionary<StitchId, EquatableArray<Step>> namedGroups = [];

    /// <summary>'V-st: (dc, ch 1, dc) in same st': the stitches and chains of a group in one place; empty for any other definition.</summary>
    private static EquatableArray<Step> MembersOf(StitchDefinition definition)
    {
        IEnumerable<Step> steps = definition.Steps is [GroupStep group] ? group.Steps : definition.Steps;
        Step[] members = [.. steps.Where(step => step is not RemarkStep).Select(step => step is StitchStep { Where: { Choice: PlaceChoice.Same or PlaceChoice.Next, Count: null, And: null } } placed ? placed with { Where = null } : step)];
        return members.Any(step => step is ChainStep) && members.All(step => step is ChainStep or StitchStep { Where: null }) ? [.. members] : [];
    }

    private static bool IsSame(Step one, Step other) => (one, other) switch
    {
        (StitchStep a, StitchStep b) => a.Stitch == b.Stitch && (a.Count ?? a.PerPlace)?.Values == (b.Count ?? b.PerPlace)?.Values && a.Where is null && b.Where is null,
        (ChainStep a, ChainStep b) => a.Count.Values == b.Count.Values,
        _ => false,
    };

    /// <summary>The chains laid where the text leaves the foundation's length open; null for none.</summary>
    public int? SampleChains { get; init; }

    public string SizeName => Pattern.Sizes[Size];

    /// <summary>The lengths of turning chain whose counting the text leaves open, as met while working.</summary>
    public HashSet<int> OpenTurningChains { get; } = [];

    public StitchTraits Traits(StitchId stitch)
    {
        if (!traits.TryGetValue(stitch, out StitchTraits? known))
            traits[stitch] = known = StitchTraits.Of(stitch, definitions.GetValueOrDefault(stitch));
        return known;
    }

    /// <summary>True where the words of a span hold a word.</summary>
    public bool Says(TextSpan span, string word) =>
        Pattern.Source.Content.AsSpan(span.Start, span.Length).Contains(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Height of a row by the gauge that the text states; null where it states none.</summary>
    public double? MillimetresPerRow => StatedGauge.MillimetresPerRow(Pattern.Statements);

    /// <summary>A number for this size; null where this size skips the step.</summary>
    public int? Number(SizedNumber? number) => number?.For(Size);

    /// <summary>Whether a turning chain of n counts: told in the text, found, or by <paramref name="usual"/>.</summary>
    public bool TurningChainCounts(int chains, bool usual)
    {
        if (Told(chains) is { } told) return told;
        OpenTurningChains.Add(chains);
        return Conventions.Counts(chains) ?? usual;
    }

    /// <summary>'Sc2tog: sc2tog over next 2 sts' explains nothing that could be worked.</summary>
    private static bool MentionsItself(StitchDefinition definition) => definition.Steps.Any(step => Mentions(step, definition.Id));

    private static bool Mentions(Step step, StitchId stitch) => step switch
    {
        StitchStep named => named.Stitch == stitch,
        GroupStep group => group.Steps.Any(inner => Mentions(inner, stitch)),
        RepeatStep repeat => repeat.Steps.Any(inner => Mentions(inner, stitch)),
        _ => false,
    };

    /// <summary>'Beg pc' is a popcorn begun with a chain: it is counted and named as one. Any other stitch is itself.</summary>
    public StitchId Counterpart(StitchId stitch)
    {
        if (!stitch.Value.StartsWith("beg", StringComparison.Ordinal) || stitch.Value.Length < 5) return stitch;
        string plain = stitch.Value["beg".Length..];
        return Pattern.Definitions.FirstOrDefault(other => other.Id.Value == plain || other.Names.Contains(plain))?.Id ?? new StitchId(plain);
    }

    /// <summary>What the text says of a turning chain of n; null where it says nothing.</summary>
    public bool? Told(int chains) => toldTurningChains.TryGetValue(chains, out bool told) ? told : chains > 1 || toldOfAll == false ? toldOfAll : null;

    /// <summary>Remembers what the text says of a turning chain of n; it holds from here on.</summary>
    /// <param name="chains">The chain's length.</param>
    /// <param name="counts">Whether it counts.</param>
    /// <param name="stitch">The stitch that it counts as; null where the words don't say.</param>
    /// <param name="then">The chains that it is beside the stitch.</param>
    public void Tell(int chains, bool counts, StitchId? stitch, int then)
    {
        toldTurningChains[chains] = counts;
        if (counts && stitch is { } told) toldStitches[chains] = (told, then);
    }

    /// <summary>What a turning chain of n was said to count as, rows before: 'Ch 4 (counts as tr)'; null where that was not said.</summary>
    public (StitchId Stitch, int Then)? ToldStitch(int chains) => toldStitches.TryGetValue(chains, out (StitchId, int) told) ? told : null;

    private readonly Dictionary<int, (StitchId Stitch, int Then)> toldStitches = [];

    /// <summary>A stitch's name in the pattern's own terms.</summary>
    public string Name(StitchId stitch) =>
        Vocabulary.Standard.Find(stitch)?.Abbreviation(Pattern.Terms.Terminology) ?? stitch.Value;

    /// <summary>A kind of place in the pattern's own terms: 'ch-2 sp', 'dc', 'st'.</summary>
    public string Name(PlaceKind kind) => kind.Noun switch
    {
        PlaceNoun.Stitch or PlaceNoun.Group => Name(kind.Stitch!.Value),
        PlaceNoun.Chain => "ch",
        PlaceNoun.ChainSpace => kind.Chains is { } n ? $"ch-{n} sp" : "ch sp",
        PlaceNoun.Space => "sp",
        PlaceNoun.Gap => "sp between sts",
        PlaceNoun.TurningChain => "turning chain",
        PlaceNoun.Corner => "corner",
        PlaceNoun.StitchOrSpace => "st or sp",
        PlaceNoun.StitchOrChain => "st or ch",
        PlaceNoun.RowEnd => "row end",
        PlaceNoun.Ring => "ring",
        _ => "st",
    };

    /// <summary>A cell in the pattern's own terms.</summary>
    public string Name(Cell cell) => cell.Kind switch
    {
        CellKind.Chains => $"ch-{cell.Chains} sp",
        CellKind.FoundationChain => "ch",
        CellKind.TurningChain => "turning chain",
        CellKind.Ring => "ring",
        _ => Name(cell.Stitch),
    };
}
