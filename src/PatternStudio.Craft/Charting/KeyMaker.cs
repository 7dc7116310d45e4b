using PatternStudio.Craft.Charting.Layout;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting;

/// <summary>Collects the key: each symbol that the chart uses, once.</summary>
internal sealed class KeyMaker(StitchForms forms, ChartNames names, SymbolStyle style)
{
    private readonly List<KeyEntry> entries = [];
    private readonly HashSet<string> seen = [];

    public EquatableArray<KeyEntry> Entries => entries.ToEquatableArray();

    /// <summary>True where the published keys draw one of the symbols in different ways.</summary>
    public bool KeysDiffer { get; private set; }

    public void Add(LaidRow row)
    {
        foreach (LaidCell laid in row.Cells) Add(laid.Cell);
    }

    private void Add(Cell cell)
    {
        switch (cell.Kind)
        {
            case CellKind.Stitch: AddStitch(cell); break;
            case CellKind.Join: Once(StitchId.SlipStitch, "", [Dots.At(new Point(0, -0.5))]); break;
            case CellKind.Ring when cell.Chains == 0: Once("ring", "magic ring", [new Oval(new Point(0, -0.5), 0.4, 0.4, 0), new Oval(new Point(0, -0.5), 0.3, 0.3, 0)]); break;
            case CellKind.Picot: Once("picot", "picot: chains closed with a slip stitch", [.. Dots.Chain(3, share => new Point(0.45 * Math.Sin(6 * share), -0.5 + (0.45 * Math.Cos(6 * share)))), Dots.At(new Point(0, 0))]); break;
            default: Once(StitchId.Chain, "", [.. Dots.Chain(1, share => new Point(share - 0.5, -0.5))]); break;
        }
    }

    private void AddStitch(Cell cell)
    {
        FootKind foot = cell.Feet.IsEmpty ? FootKind.BothLoops : cell.Feet[0].Kind;
        string loops = foot switch { FootKind.BackLoop => "in back loop only", FootKind.FrontLoop => "in front loop only", FootKind.ThirdLoop => "in third loop", _ => "" };
        if (!seen.Add(cell.Stitch.Value + loops)) return;
        StitchForm form = forms.Of(cell.Stitch);
        double height = Math.Max(1, form.Height);
        Point[] feet = form.Kind == FormKind.Together ? [.. Enumerable.Range(0, form.Legs).Select(leg => new Point(leg - ((form.Legs - 1) / 2.0), 0))] : [new Point(0, 0)];
        var top = new Point(0, -height);
        List<Shape> shapes = Drawn(style);
        KeysDiffer |= !shapes.SequenceEqual(Drawn(style == SymbolStyle.Cyc ? SymbolStyle.Jis : SymbolStyle.Cyc));
        Add(cell.Stitch, loops, shapes);

        List<Shape> Drawn(SymbolStyle by) =>
        [
            .. SymbolComposer.Compose(form, feet, top, new Point(0, -1), ChartNames.Short(cell.Stitch, names.Terminology), by),
            .. SymbolComposer.LoopMark(foot, feet[0], top, by) is { } mark ? (Shape[])[mark] : [],
        ];
    }

    private void Once(StitchId id, string remark, List<Shape> shapes)
    {
        if (seen.Add(id.Value + remark)) Add(id, remark, shapes);
    }

    private void Add(StitchId id, string remark, List<Shape> shapes)
    {
        Terminology other = names.Terminology == Terminology.Us ? Terminology.Uk : Terminology.Us;
        string name = ChartNames.Full(id, names.Terminology);
        string otherName = ChartNames.Full(id, other);
        string tail = remark.Length == 0 ? "" : ", " + remark;
        entries.Add(new KeyEntry(shapes.ToEquatableArray(), name + tail, otherName == name ? "" : otherName + tail));
    }

    private void Once(string mark, string name, List<Shape> shapes)
    {
        if (seen.Add(mark)) entries.Add(new KeyEntry(shapes.ToEquatableArray(), name, ""));
    }
}
