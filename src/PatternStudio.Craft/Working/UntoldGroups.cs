using PatternStudio.Craft.Terms;

namespace PatternStudio.Craft.Working;

/// <summary>
/// Groups that a pattern calls 'shell' or 'V-st' without telling anywhere what one is: known by their look. A V-st is two stitches of a kind parted by chains; a shell
/// is any other group of three or more in one place, and the half ones at a row's ends are none.
/// </summary>
internal sealed class UntoldGroups(WorkedRow row, WorkContext context)
{
    private static readonly StitchId VStitch = new("vst");
    private readonly Dictionary<StitchId, int> sizes = [];

    /// <summary>True where the vocabulary has the name for groups, and nothing in the pattern says which stitches it stands for.</summary>
    public bool IsUntold(StitchId name) =>
        Vocabulary.Standard.Find(name) is { IsGroup: true } && context.Traits(name).Definition is null && !context.Works(name);

    /// <summary>True for a cell of a group that such a name can only mean: the row has no groups of another size that it could mean as well.</summary>
    public bool IsCalled(StitchId name, Cell cell) => cell is { Group: null, GroupSize: >= 3 } && SizeOf(name) == cell.GroupSize;

    private int SizeOf(StitchId name)
    {
        if (sizes.TryGetValue(name, out int size)) return size;
        return sizes[name] = IsUntold(name) ? OnlySize(name == VStitch) : 0;
    }

    private int OnlySize(bool parted)
    {
        Cell[][] groups = [.. Groups().Where(group => IsParted(group) == parted)];
        int[] whole = [.. groups.Where(group => group[^1] != row.Runs[^1].Unit[^1]).Select(group => group.Length).Distinct()];
        if (whole.Length == 0) whole = [.. groups.Select(group => group.Length).Distinct()];
        return whole is [var only] ? only : 0;
    }

    /// <summary>Each of the row's groups at least once. Two turns of a run show those that begin in one and end in the next.</summary>
    private IEnumerable<Cell[]> Groups()
    {
        Cell[] cells = [.. row.Runs.SelectMany(run => run.Times > 1 ? run.Unit.Concat(run.Unit) : run.Unit)];
        for (int i = 0; i < cells.Length; i++)
            if (cells[i] is { Group: null, GroupIndex: 0, GroupSize: >= 3 and var size } && i + size <= cells.Length) yield return cells[i..(i + size)];
    }

    /// <summary>'(dc, ch 1, dc)'.</summary>
    private static bool IsParted(Cell[] group) =>
        group is [{ Kind: CellKind.Stitch } one, { Kind: CellKind.Chains }, { Kind: CellKind.Stitch } other] && one.Stitch == other.Stitch;
}
