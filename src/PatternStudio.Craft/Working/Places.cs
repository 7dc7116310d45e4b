using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>Which cells of the row below are places of a kind, and how many each offers.</summary>
internal sealed class Places(Course course, Conventions conventions)
{
    private readonly int widestSpace = WidestSpace(course.Row);
    private readonly HashSet<int> lengths = [.. course.Row.Runs.SelectMany(run => run.Unit).Where(cell => cell.Kind == CellKind.Chains).Select(cell => cell.Chains)];

    /// <summary>True where the row has chain spaces; without them 'sp' means a gap between groups.</summary>
    public bool HasSpaces => widestSpace > 0;

    /// <summary>How many places of a kind a cell offers.</summary>
    public long Offers(Cell cell, long index, PlaceKind kind) => kind.Noun switch
    {
        PlaceNoun.AnyStitch => Stitches(cell),
        PlaceNoun.Stitch or PlaceNoun.Group when IsPicotLoop(cell, kind) => 1,
        PlaceNoun.Stitch or PlaceNoun.Group when cell.Kind == CellKind.Picot => kind.Stitch == cell.Stitch ? 1 : 0,
        PlaceNoun.Stitch => kind.Stitch == StitchId.Chain ? Chains(cell) : IsStitch(cell) && Matches(cell.Stitch, kind.Stitch!.Value) ? 1 : StartsGroup(cell, kind),
        PlaceNoun.Chain => Chains(cell),
        PlaceNoun.ChainSpace => cell.Kind == CellKind.Chains && FitsLength(cell, index, kind.Chains) || IsTurningSpace(cell, index, kind.Chains) ? 1 : 0,
        PlaceNoun.Space when CarriesPicot(cell, index) => 0,
        PlaceNoun.Space or PlaceNoun.Ring => cell.Kind == CellKind.Chains ? 1 : 0,
        PlaceNoun.Group => IsStitch(cell) && cell.Stitch == kind.Stitch ? 1 : StartsGroup(cell, kind),
        PlaceNoun.StitchOrSpace => IsStitch(cell) || cell.Kind is CellKind.Chains or CellKind.FoundationChain ? 1 : 0,
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

    private long StartsGroup(Cell cell, PlaceKind kind) =>
        cell.GroupSize > 0 && cell.Group == kind.Stitch && cell.GroupIndex == (course.Turned ? cell.GroupSize - 1 : 0) ? 1 : 0;

    /// <summary>The chain that begins a row is part turning chain, part space: patterns call it by either length.</summary>
    private bool FitsLength(Cell cell, long index, int? chains) =>
        chains is null || cell.Chains == chains || course.PlaceOf(index) == 0;

    /// <summary>'sl st in ch-3 sp of tile': where no other space has that length, the turning chain is meant.</summary>
    private bool IsTurningSpace(Cell cell, long index, int? chains) =>
        cell.Kind == CellKind.TurningChain && cell.Chains == chains && chains > 1 && (conventions.TurningChainsAreSpaces || !lengths.Contains(cell.Chains));

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
