using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Tests.Charting;

/// <summary>
/// Works small fabrics for tests from a shorthand, so that measuring and charting are tested without the reader: <c>t1</c> a turning chain that does not
/// count, <c>T3dc</c> one that counts as a dc, <c>sc</c> in the next place, <c>5dc</c> five in the next place, <c>=dc</c> in the same place, <c>-2</c> skip two
/// places, <c>c2</c> two chains, <c>dc2tog</c> over two places, <c>p3</c> a picot, <c>j</c> a join to the first stitch.
/// </summary>
internal sealed class FabricBuilder
{
    private readonly List<WorkedRow> rows = [];
    private List<Cell> below = [];

    public static FabricBuilder Chain(int chains)
    {
        var builder = new FabricBuilder();
        builder.Add(RowKind.Foundation, 0, "Foundation", [.. Enumerable.Repeat(Plain(CellKind.FoundationChain, "ch", 1), chains)], false);
        return builder;
    }

    /// <summary>A ring of so many chains; 0 for a magic ring.</summary>
    public static FabricBuilder Ring(int chains)
    {
        var builder = new FabricBuilder();
        builder.Add(RowKind.Foundation, 0, "Foundation", [Plain(CellKind.Ring, "ch", chains)], false);
        return builder;
    }

    public FabricBuilder Row(string shorthand, bool turned = true) => Work(shorthand, RowKind.Row, turned);

    public FabricBuilder Round(string shorthand) => Work(shorthand, RowKind.Round, false);

    public FabricBuilder NotChecked(RowKind kind = RowKind.Row)
    {
        Add(kind, rows.Count, $"Row {rows.Count}", [], true, RowStatus.NotChecked);
        return this;
    }

    /// <summary>The pattern with this one piece.</summary>
    public CheckedPattern Pattern(params StitchDefinition[] definitions)
    {
        var pattern = new Pattern(new SourceText(""), new TermsDecision(Terminology.Us, TermsOrigin.Assumed, 0.5, []), [""], [], definitions.ToEquatableArray(), [], []);
        return new CheckedPattern(pattern, [new CheckedSize(new Fabric("", [Piece()]), [], default)], []);
    }

    public WorkedPiece Piece() => new("", rows.ToEquatableArray());

    public static string Times(int times, string shorthand) => string.Join(' ', Enumerable.Repeat(shorthand, times));

    private FabricBuilder Work(string shorthand, RowKind kind, bool turned)
    {
        var row = new ShorthandRow(below, turned);
        foreach (string word in shorthand.Split(' ', StringSplitOptions.RemoveEmptyEntries)) row.Work(word);
        string label = kind == RowKind.Row ? $"Row {rows.Count}" : $"Rnd {rows.Count}";
        Add(kind, rows.Count, label, row.Cells, turned, joined: shorthand.EndsWith('j'));
        return this;
    }

    private void Add(RowKind kind, int number, string label, List<Cell> cells, bool turned, RowStatus status = RowStatus.Checked, bool joined = false)
    {
        var instruction = new RowInstruction(new RowHeading(kind, RowNumbering.Listed, label, default), [], null, default);
        FabricSide side = kind == RowKind.Row && number % 2 == 0 ? FabricSide.Wrong : FabricSide.Right;
        rows.Add(new WorkedRow(number, instruction, kind, side, status, cells.Count == 0 ? [] : [new Run(cells.ToEquatableArray(), 1, 0)])
        {
            Label = label,
            Index = rows.Count,
            Into = rows.Count - 1,
            Turned = turned,
            Joined = joined,
            Total = cells.Count(cell => cell.Counts),
        });
        below = cells;
    }

    internal static Cell Plain(CellKind kind, string stitch, int chains, bool counts = false, params Foot[] feet) =>
        new(kind, new StitchId(stitch), chains, feet.ToEquatableArray(), counts, default);
}

/// <summary>Works one row of the shorthand over the row below.</summary>
internal sealed class ShorthandRow
{
    private readonly List<int> places;
    private readonly List<Cell> below;
    private int next;

    public ShorthandRow(List<Cell> below, bool turned)
    {
        this.below = below;
        places = [.. Enumerable.Range(0, below.Count).Where(i => below[i].Kind is CellKind.Stitch or CellKind.Chains or CellKind.FoundationChain or CellKind.Ring || below[i].Counts)];
        if (turned) places.Reverse();
    }

    public List<Cell> Cells { get; } = [];

    public void Work(string word)
    {
        string rest = word[1..];
        if (word == "j") Cells.Add(FabricBuilder.Plain(CellKind.Join, "slst", 0, false, new Foot(0, Cells.FindIndex(cell => cell.Counts), -1, FootKind.BothLoops)));
        else if (word[0] == 'T') Cells.Add(FabricBuilder.Plain(CellKind.TurningChain, rest[1..], rest[0] - '0', true, FootAt(next)));
        else if (word[0] == 't' && char.IsDigit(word[1])) Cells.Add(FabricBuilder.Plain(CellKind.TurningChain, "ch", int.Parse(rest), false, FootAt(next)));
        else if (word[0] == 'c' && char.IsDigit(word[1])) Cells.Add(FabricBuilder.Plain(CellKind.Chains, "ch", int.Parse(rest)));
        else if (word[0] == 'p' && char.IsDigit(word[1])) Cells.Add(FabricBuilder.Plain(CellKind.Picot, "ch", int.Parse(rest)));
        else if (word[0] == '-') next += int.Parse(rest);
        else if (word[0] == '=') Stitches(1, rest, same: true);
        else if (char.IsDigit(word[0])) Stitches(word[0] - '0', rest, same: false);
        else Stitches(1, word, same: false);
    }

    private void Stitches(int times, string stitch, bool same)
    {
        StitchForm form = StitchForms.FromName(stitch) ?? StitchForm.UnknownOf(new StitchId(stitch));
        int feet = form.Kind == FormKind.Together ? form.Legs : 1;
        if (same) next--;
        Foot[] at = [.. Enumerable.Range(0, feet).Select(leg => FootAt(next + leg, form))];
        for (int i = 0; i < times; i++) Cells.Add(FabricBuilder.Plain(CellKind.Stitch, stitch, 0, true, at));
        next += feet;
    }

    private Foot FootAt(int at, StitchForm? form = null)
    {
        bool ring = below[0].Kind == CellKind.Ring;
        int place = ring ? 0 : places[at];
        FootKind kind = ring ? FootKind.Ring
            : form is { FrontPost: true } ? FootKind.FrontPost
            : form is { BackPost: true } ? FootKind.BackPost
            : below[place].Kind == CellKind.Chains ? FootKind.Space
            : below[place].Kind == CellKind.FoundationChain ? FootKind.Chain
            : FootKind.BothLoops;
        return new Foot(1, place, -1, kind);
    }
}
