using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;
using PatternStudio.Craft.Writing.Instructions;

namespace PatternStudio.Craft.Writing.Completion;

/// <summary>Where the hook can go next: what the row below offers from here on.</summary>
internal sealed class PlaceProposals(RowsAbove above)
{
    private readonly StitchWords stitches = new(above.Pattern);

    private string Across => above.Around ? "around" : "across";

    /// <param name="soFar">The row so far; null where nothing of it is worked yet, or it can't be.</param>
    public IEnumerable<Proposal> Of(RowSoFar? soFar)
    {
        if (above.Below is not { } below) return [];
        if (below.Kind == RowKind.Foundation) return OnFoundation(below, soFar);
        IEnumerable<Proposal> next = soFar is null ? [] : Next(soFar.Next, below);
        return [.. next, .. All(below)];
    }

    private static IEnumerable<Proposal> OnFoundation(WorkedRow foundation, RowSoFar? soFar)
    {
        if (foundation.Runs is [{ Unit: [{ Kind: CellKind.Ring }, ..] }, ..])
        {
            yield return new("ring", "the ring at the centre", IsPlace: true);
            yield break;
        }

        if (soFar is null) yield return new("2nd ch from hook", "the turning chain is 1", IsPlace: true);
        if (soFar is null) yield return new("4th ch from hook", "the turning chain is 3", IsPlace: true);
        yield return new("each ch across", "every chain that is left", IsPlace: true);
        yield return new("next ch", "the next chain", IsPlace: true);
    }

    /// <summary>The next stitch and the next space, as the hook meets them.</summary>
    private IEnumerable<Proposal> Next(IReadOnlyList<Cell> cells, WorkedRow below) =>
        cells.Select(NameOf).OfType<string>().Distinct().Take(2).Select((name, index) =>
            new Proposal($"next {name}", index == 0 ? $"what comes next in {below.Label}" : $"what comes after that in {below.Label}", IsPlace: true));

    private string? NameOf(Cell cell) => cell.Kind switch
    {
        CellKind.Stitch => stitches.Of(cell.Stitch),
        CellKind.Chains when !cell.GoesOn => $"ch-{cell.Chains} sp",
        CellKind.TurningChain when cell.Counts => "st",
        _ => null,
    };

    private IEnumerable<Proposal> All(WorkedRow below)
    {
        string[] kinds = [.. below.Counts.Where(kind => kind.Value > 0).Select(kind => stitches.Of(new StitchId(kind.Key)))];
        yield return new("next st", $"the next stitch of {below.Label}", IsPlace: true);
        yield return new($"each st {Across}", $"every stitch of {below.Label}", IsPlace: true);
        foreach (string kind in kinds) yield return new($"each {kind} {Across}", $"every {kind} of {below.Label}", IsPlace: true);
        foreach ((string space, long count) in below.Spaces)
        {
            yield return new($"next {space} sp", $"{below.Label} has {count}", IsPlace: true);
            yield return new($"each {space} sp {Across}", $"all {count} of {below.Label}", IsPlace: true);
            yield return new($"{space} sp", $"{below.Label} has {count}", IsPlace: true);
        }

        if (kinds.Length > 0) yield return new($"first {kinds[0]}", $"the first of {below.Label}", IsPlace: true);
        if (kinds.Length > 0) yield return new($"last {kinds[^1]}", $"the last of {below.Label}", IsPlace: true);
        foreach (string kind in kinds) yield return new($"next {kind}", $"a stitch of {below.Label}", IsPlace: true);
        yield return new("same st", "where the last stitch was worked", IsPlace: true);
    }
}
