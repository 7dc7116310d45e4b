using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>What a row adds up to, counted run by run: a row of a million stitches costs what its repeat costs.</summary>
/// <param name="Places">Stitches across, each chain of a space counted as one: what the row's width follows.</param>
/// <param name="Stitches">Stitches alone.</param>
/// <param name="Height">Mean height of its stitches, in stitch widths; 0 for a foundation chain.</param>
/// <param name="Yarn">Yarn in all, a chain being 1.</param>
internal sealed record RowTally(long Places, long Stitches, double Height, double Yarn)
{
    /// <summary>The same by colour.</summary>
    public IReadOnlyDictionary<string, double> YarnByColour { get; init; } = new Dictionary<string, double>();

    /// <summary>Its stitches by height: how tall (in stitch widths, by anatomy) and what share of them; empty for a foundation chain.</summary>
    public IReadOnlyDictionary<double, double> Heights { get; init; } = new Dictionary<double, double>();

    /// <summary>Chains in arches of <see cref="Arch"/> and more: lace hangs in them, and its size is not that of its stitches.</summary>
    public long InArches { get; init; }

    /// <summary>Chains that make an arch and no mere space.</summary>
    public const int Arch = 4;

    /// <summary>A stitch that nothing is known of; null where all are known.</summary>
    public StitchId? Unknown { get; init; }

    public static RowTally Of(WorkedRow row, StitchForms forms)
    {
        var counter = new Counter(forms);
        foreach (Run run in row.Runs)
            foreach (Cell cell in run.Unit)
                counter.Add(cell, run.Times);
        return counter.Tally();
    }

    private sealed class Counter(StitchForms forms)
    {
        private readonly Dictionary<string, double> yarn = [];
        private readonly Dictionary<double, long> byHeight = [];
        private long places;
        private long stitches;
        private long inArches;
        private double heights;
        private StitchId? unknown;

        public void Add(Cell cell, long times)
        {
            StitchForm form = forms.Of(cell.Stitch);
            places += Width(cell) * times;
            if (Stands(cell)) AddStitch(form, times);
            if (cell is { Kind: CellKind.Chains, Chains: >= Arch }) inArches += cell.Chains * times;
            yarn[cell.Colour] = yarn.GetValueOrDefault(cell.Colour) + (YarnOf(cell, form) * times);
        }

        public RowTally Tally() =>
            new(places, stitches, stitches == 0 ? 0 : heights / stitches, yarn.Values.Sum())
            {
                YarnByColour = yarn,
                Unknown = unknown,
                InArches = inArches,
                Heights = byHeight.ToDictionary(pair => pair.Key, pair => (double)pair.Value / stitches),
            };

        private void AddStitch(StitchForm form, long times)
        {
            stitches += times;
            heights += form.Height * times;
            byHeight[form.Height] = byHeight.GetValueOrDefault(form.Height) + times;
            if (form.Kind == FormKind.Unknown) unknown ??= form.Id;
        }
    }

    /// <summary>How many stitch widths a cell takes of its row.</summary>
    public static int Width(Cell cell) => cell.Kind switch
    {
        CellKind.Stitch => 1,
        CellKind.FoundationChain => Math.Max(1, cell.Chains),
        CellKind.Chains => cell.Chains,
        CellKind.TurningChain => cell.Counts ? 1 : 0,
        _ => 0,
    };

    /// <summary>True for what gives a row its height.</summary>
    private static bool Stands(Cell cell) => cell.Kind == CellKind.Stitch || (cell.Kind == CellKind.TurningChain && cell.Counts);

    private static double YarnOf(Cell cell, StitchForm form) => cell.Kind switch
    {
        CellKind.Stitch => form.Yarn,
        CellKind.Join => 1,
        CellKind.Picot => cell.Chains + 1,
        CellKind.FoundationChain => Math.Max(1, cell.Chains),
        _ => cell.Chains,
    };
}
