using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>Which cells of the row below are places of a kind, and how many each offers.</summary>
internal sealed class Places(Course course, WorkContext context)
{
    private readonly Conventions conventions = context.Conventions;
    private readonly int widestSpace = WidestSpace(course.Row);
    private readonly int beginning = Beginning(course.Row);
    private readonly HashSet<int> lengths = [.. course.Row.Runs.SelectMany(run => run.Unit).Where(cell => cell.Kind == CellKind.Chains).Select(cell => cell.Chains)];

    /// <summary>Groups that the pattern names and never tells.</summary>
    public UntoldGroups Untold { get; } = new(course.Row, context);

    /// <summary>True where the row has chain spaces; without them 'sp' means a gap between groups.</summary>
    public bool HasSpaces => widestSpace > 0;

    /// <summary>Stitches alone, no groups and no chains: there 'sp' can only mean between two stitches.</summary>
    private bool IsPlain => isPlain ??= course.Row.Kind != RowKind.Foundation && course.Row.Runs.SelectMany(run => run.Unit).All(cell => cell.Kind is CellKind.Stitch or CellKind.TurningChain && (cell.GroupSize == 0 || cell.Feet is [{ Kind: FootKind.Ring }]));

    private bool? isPlain;

    /// <summary>How many places of a kind a cell offers.</summary>
    public long Offers(Cell cell, long index, PlaceKind kind) => kind.Noun switch
    {
        PlaceNoun.AnyStitch => Stitches(cell),
        PlaceNoun.Stitch or PlaceNoun.Group when IsPicotLoop(cell, kind) => 1,
        PlaceNoun.Stitch or PlaceNoun.Group when cell.Kind == CellKind.Picot => kind.Stitch == cell.Stitch ? 1 : 0,
        PlaceNoun.Stitch => kind.Stitch == StitchId.Chain ? Chains(cell) : IsStitch(cell) && Matches(cell.Stitch, kind.Stitch!.Value) ? 1 : StartsGroup(cell, index, kind),
        // The top of a chain that stands for a stitch is a chain too: 'ch 2, skip 2 ch, dc in next ch' at the end of a mesh row.
        PlaceNoun.Chain => cell is { Kind: CellKind.TurningChain, Counts: true } ? 1 : Chains(cell),
        PlaceNoun.ChainSpace => IsSpace(cell) && FitsLength(cell, index, kind.Chains) || IsTurningSpace(cell, index, kind.Chains) ? 1 : 0,
        PlaceNoun.Space when IsPlain => IsStitch(cell) && !EndsRow(index) ? 1 : 0,
        PlaceNoun.Space when CarriesPicot(cell, index) => 0,
        PlaceNoun.Space or PlaceNoun.Ring => IsSpace(cell) ? 1 : 0,
        PlaceNoun.Gap => HasSpaces ? IsSpace(cell) ? 1 : 0 : IsStitch(cell) && !EndsRow(index) ? 1 : 0,
        PlaceNoun.Group => IsStitch(cell) && cell.Stitch == kind.Stitch ? 1 : StartsGroup(cell, index, kind),
        PlaceNoun.StitchOrSpace => IsStitch(cell) || IsSpace(cell) || cell.Kind == CellKind.FoundationChain ? 1 : 0,
        PlaceNoun.StitchOrChain => IsStitch(cell) ? 1 : Chains(cell),
        PlaceNoun.TurningChain => course.PlaceOf(index) == 0 && cell.Kind is CellKind.TurningChain or CellKind.Chains ? 1 : 0,
        PlaceNoun.Corner => IsCorner(cell) ? 1 : 0,
        _ => 0,
    };

    /// <summary>Stitches that a cell offers by the pattern's convention.</summary>
    public long Stitches(Cell cell) => cell.Kind switch
    {
        CellKind.Stitch or CellKind.FoundationChain => 1,
        CellKind.TurningChain => cell.Counts ? 1 : 0,
        CellKind.Chains => conventions.ChainsAreStitches ? cell.Chains : 0,
        _ => 0,
    };

    /// <summary>True where 'in each dc' may mean a cell of that stitch: the stitch itself, or another form of it (a post stitch, one in the back loop).</summary>
    public static bool Matches(StitchId met, StitchId named) =>
        met == named
        || met.Value == "beg" + named.Value
        || BaseOf(met) == named
        || IsCluster(named) && IsCluster(met);

    private static StitchId BaseOf(StitchId stitch) => Vocabulary.Standard.Find(stitch)?.Base ?? stitch;

    public static bool IsCluster(StitchId stitch) =>
        stitch.Value.EndsWith("cl", StringComparison.Ordinal) || stitch.Value.StartsWith("cluster", StringComparison.Ordinal);

    /// <summary>True for chains that are a space of their own.</summary>
    public static bool IsSpace(Cell cell) => cell is { Kind: CellKind.Chains, GoesOn: false };

    private static bool IsPicotLoop(Cell cell, PlaceKind kind) => cell.Kind == CellKind.Chains && cell.Group == kind.Stitch && kind.Stitch?.Value == "picotloop";

    /// <summary>The single chain beside a picot is no loop where the row has real ones.</summary>
    private bool CarriesPicot(Cell cell, long index) =>
        cell is { Kind: CellKind.Chains, Chains: 1 } && widestSpace > 1
        && (index > 0 && course.At(index - 1).Kind == CellKind.Picot || index + 1 < course.Length && course.At(index + 1).Kind == CellKind.Picot);

    private static bool IsStitch(Cell cell) => cell.Kind == CellKind.Stitch || cell is { Kind: CellKind.TurningChain, Counts: true };

    private static long Chains(Cell cell) => cell.Kind switch
    {
        CellKind.FoundationChain => 1,
        CellKind.Chains => cell.Chains,
        _ => 0,
    };

    private long StartsGroup(Cell cell, long index, PlaceKind kind) =>
        cell.GroupSize > 0 && IsFirstOfGroup(cell, index) && IsOf(cell, kind) ? 1 : 0;

    /// <summary>True for the cell of a group that is met first. A group that a round begins inside of is not met again where the round ends.</summary>
    public bool IsFirstOfGroup(Cell cell, long index) => cell.GroupIndex == (course.Turned ? cell.GroupSize - 1 : 0) && index + cell.GroupSize <= course.Length;

    /// <summary>True for a cell of a group that is called so.</summary>
    public bool IsOf(Cell cell, PlaceKind kind) => cell.Group == kind.Stitch || kind is { Noun: PlaceNoun.Group, Stitch: { } name } && Untold.IsCalled(name, cell);

    private readonly Dictionary<StitchId, bool> groups = [];

    /// <summary>True where the row has a group that is called so. Asked for each stitch of a row, and so looked for once.</summary>
    public bool HasGroup(StitchId name)
    {
        if (!groups.TryGetValue(name, out bool has))
        {
            var kind = new PlaceKind(PlaceNoun.Group, name);
            groups[name] = has = course.Row.Runs.SelectMany(run => run.Unit).Any(cell => IsOf(cell, kind));
        }
        return has;
    }

    /// <summary>The chain that begins a row is part turning chain, part space: patterns call it by either length.</summary>
    private bool FitsLength(Cell cell, long index, int? chains) =>
        chains is null || cell.Chains == chains || course.PlaceOf(index) == 0 || course.PlaceOf(index) == 1 && !lengths.Contains(chains.Value) && BeginsWith(chains.Value);

    /// <summary>True where a chain of so many begins the row, part stitch and part space: the 4 of 'ch 4 (counts as dc and ch 1)'.</summary>
    public bool BeginsWith(int chains) => chains == beginning;

    private static int Beginning(WorkedRow row)
    {
        if (row.Runs is not [var first, ..] || first.Unit is not [{ Kind: CellKind.TurningChain, Counts: true } start, ..]) return 0;
        Cell? second = first.Unit.Count > 1 ? first.Unit[1] : first.Times > 1 ? null : row.Runs.Count > 1 ? row.Runs[1].Unit[0] : null;
        return second is { Kind: CellKind.Chains } beside ? start.Chains + beside.Chains : 0;
    }

    /// <summary>'sl st in ch-3 sp of tile': where no other space has that length, the turning chain is meant.</summary>
    private bool IsTurningSpace(Cell cell, long index, int? chains) =>
        cell.Kind == CellKind.TurningChain && cell.Chains == chains && chains > 1 && (conventions.TurningChainsAreSpaces || !lengths.Contains(cell.Chains));

    /// <summary>Behind the last stitch of a row there is no gap; a round goes on with its first.</summary>
    private bool EndsRow(long index) => !course.Row.Joined && !course.Row.Spiral && course.Find(index + 1, (cell, _) => IsStitch(cell)) < 0;

    private bool IsCorner(Cell cell) => widestSpace > 0
        ? cell.Kind == CellKind.Chains && cell.Chains == widestSpace
        : cell.GroupSize >= 3 && cell.GroupIndex == cell.GroupSize / 2;

    private static int WidestSpace(WorkedRow row)
    {
        int widest = 0;
        foreach (Run run in row.Runs)
            foreach (Cell cell in run.Unit)
                if (cell.Kind == CellKind.Chains) widest = Math.Max(widest, cell.Chains);
        return widest;
    }
}
