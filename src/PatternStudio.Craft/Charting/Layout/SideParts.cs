using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>The part of a row that lies in a scallop beside the strip.</summary>
/// <param name="Row">Index of the row.</param>
/// <param name="First">Its first cell.</param>
/// <param name="Last">Its last cell.</param>
/// <param name="AtStart">True where the row begins in the scallop and comes back to the strip; false where it goes out there.</param>
/// <param name="Scallop">Number of the scallop, in the order worked.</param>
internal sealed record SideRun(int Row, int First, int Last, bool AtStart, int Scallop)
{
    public bool Has(long cell) => cell >= First && cell <= Last;

    /// <summary>The cell of the strip beside it.</summary>
    public int Beside => AtStart ? Last + 1 : First - 1;

    /// <summary>Its cells from the free end to the strip.</summary>
    public IEnumerable<int> FromFreeEnd => AtStart ? Enumerable.Range(First, Last - First + 1) : Enumerable.Range(First, Last - First + 1).Reverse();
}

/// <summary>
/// Finds the scallops of an edging worked sideways: a loop of chains at the strip's side, stitches at the end of a later row worked into it, and what the next rows work on those stitches before
/// they come to the strip.
/// </summary>
internal sealed class SideParts
{
    /// <summary>So many chains make a loop to work into, and so many stitches in it a scallop.</summary>
    private const int Loop = 3;
    private const int Fewest = 3;
    private const int FewestInScallop = 5;

    /// <summary>Longer edgings come to rest as they will.</summary>
    private const long MostCells = 4000;

    private readonly Cell[][] cells;
    private readonly StitchForms forms;
    private readonly Dictionary<int, SideRun> runs = [];
    private readonly Dictionary<(int Row, long Cell), SideRun> loops = [];
    private readonly HashSet<(int Row, long Cell)> bars = [];
    private int scallops;

    private SideParts(WorkedPiece piece, StitchForms forms)
    {
        this.forms = forms;
        cells = [.. piece.Rows.Select(row => row.Cells().ToArray())];
    }

    /// <summary>The side part of each row that has one; none for a piece that is no such edging.</summary>
    public static Dictionary<int, SideRun> Of(WorkedPiece piece, StitchForms forms)
    {
        bool inRows = piece.Rows.Count > 3 && piece.Rows.All(row => row.Status == RowStatus.Checked && row.Kind == (row.Index == 0 ? RowKind.Foundation : RowKind.Row));
        return inRows && piece.Rows.Sum(row => row.Length) <= MostCells ? new SideParts(piece, forms).Find() : [];
    }

    private Dictionary<int, SideRun> Find()
    {
        for (int row = 1; row < cells.Length; row++)
        {
            if (cells[row].Length == 0) continue;
            SideRun? run = AtEnd(row) ?? AtStart(row);
            if (run is not null) runs[row] = run;
            NoteLoops(row);
        }
        foreach (IGrouping<int, SideRun> scallop in runs.Values.GroupBy(run => run.Scallop).ToArray())
            if (scallop.Sum(Stitches) < FewestInScallop)
                foreach (SideRun run in scallop) runs.Remove(run.Row);
        return runs;
    }

    private int Stitches(SideRun run) => Enumerable.Range(run.First, run.Last - run.First + 1).Count(i => cells[run.Row][i].Kind == CellKind.Stitch);

    /// <summary>Loops that the row leaves at its start: more chains than the turn needs and a stitch where they began; or a turning chain that is no stitch.</summary>
    private void NoteLoops(int row)
    {
        Cell[] own = cells[row];
        if (own[0] is { Kind: CellKind.TurningChain, Counts: false, Chains: >= Loop }) bars.Add((row, 0));
        if (runs.ContainsKey(row) || own is not [{ Kind: CellKind.TurningChain, Feet: [{ } turn] }, { Kind: CellKind.Chains, Chains: >= Loop }, { Kind: CellKind.Stitch, Feet: [{ } back] }, ..]) return;
        if ((turn.Row, turn.Place) == (back.Row, back.Place))
            loops[(row, 1)] = new SideRun(row, 0, 1, true, -1);
    }

    /// <summary>The end of a row that goes out into a scallop.</summary>
    private SideRun? AtEnd(int row)
    {
        Cell[] own = cells[row];
        int first = own.Length;
        while (first > 0 && MayLieAside(own[first - 1])) first--;
        if (first == 0) return null;
        if (Enumerable.Range(first, own.Length - first).Count(i => StandsAside(own[i])) >= Fewest) return Run(row, first, own.Length - 1, false);
        // A chain joined back to the edge is a loop that the next row works over.
        if (own[first..] is [{ Kind: CellKind.Chains, Chains: >= Loop }, { Kind: CellKind.Join, Feet: [{ } joined] }] && joined.Row < row && (!IsAside(joined) || cells[joined.Row][joined.Place].Kind == CellKind.Chains))
            loops[(row, first)] = new SideRun(row, first, own.Length - 1, false, -1);
        return null;
    }

    /// <summary>The start of a row that comes back over a scallop; a slip stitch on the strip ends it.</summary>
    private SideRun? AtStart(int row)
    {
        Cell[] own = cells[row];
        int next = 0;
        while (next < own.Length && (MayLieAside(own[next]) || (next == 0 && own[0].Kind == CellKind.TurningChain))) next++;
        if (next == own.Length || Enumerable.Range(0, next).Count(i => StandsAside(own[i])) < Fewest) return null;
        if (own[next].Kind == CellKind.Stitch && forms.Of(own[next].Stitch).Kind == FormKind.SlipStitch && next + 1 < own.Length) next++;
        return Run(row, 0, next - 1, true);
    }

    private SideRun Run(int row, int first, int last, bool atStart)
    {
        Foot[] feet = [.. Enumerable.Range(first, last - first + 1).SelectMany(i => cells[row][i].Feet).Where(IsAside)];
        SideRun? below = feet.Select(RunOf).OfType<SideRun>().FirstOrDefault();
        int scallop = below?.Scallop ?? scallops++;
        foreach (Foot foot in feet)
            if (loops.TryGetValue((foot.Row, foot.Place), out SideRun? loop) && !runs.ContainsKey(foot.Row)) runs[foot.Row] = loop with { Scallop = scallop };
        return new SideRun(row, first, last, atStart, scallop);
    }

    private SideRun? RunOf(Foot foot) => runs.TryGetValue(foot.Row, out SideRun? run) && run.Has(foot.Place) ? run : null;

    private bool IsAside(Foot foot) => RunOf(foot) is not null || loops.ContainsKey((foot.Row, foot.Place)) || bars.Contains((foot.Row, foot.Place));

    private bool StandsAside(Cell cell) => cell.Kind == CellKind.Stitch && !cell.Feet.IsEmpty && cell.Feet.All(IsAside);

    /// <summary>True for what stands on nothing of the strip.</summary>
    private bool MayLieAside(Cell cell) => cell.Kind is CellKind.Chains or CellKind.Picot or CellKind.Join || cell.Feet.All(foot => foot.Place < 0 || IsAside(foot));
}
