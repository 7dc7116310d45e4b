using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Charting.Layout;

/// <summary>Lays a piece out on paper: as its construction is drawn by custom, and where that would strain it, as it comes to rest.</summary>
internal sealed class Layouts
{
    /// <summary>A layout strained less than this, in stitch widths, needs no better.</summary>
    private const double Easy = 0.16;

    /// <summary>Straight rows are drawn straight unless their stitches lean so much that the fabric waves.</summary>
    private const double Waves = 0.55;

    /// <summary>Rounds of a circle are drawn as circles unless their stitches drift this far from their feet.</summary>
    private const double Drifts = 2.5;
    private const long MostDrifting = 600;
    private const double Astray = 4;

    /// <summary>Rounds strained more than this don't stand on each other as circles would.</summary>
    private const double Torn = 2;

    /// <summary>A relaxed layout must be so much better before it takes the place of the usual one: even circles are easier to read than true ones.</summary>
    private const double Better = 0.7;

    /// <summary>A layout strained more than this lies over itself somewhere.</summary>
    private const double Folded = 0.3;
    private const long MostUnfolded = 3000;

    /// <summary>What is spread out by distances alone must be so much better.</summary>
    private const double Clearly = 0.92;

    /// <summary>Rounds strained more than this don't go round their rows as a frame does.</summary>
    private const double Framed = 0.5;

    /// <summary>An edited piece may be strained so many times more than before, and so much more.</summary>
    private const double MostWorse = 1.2;
    private const double Slack = 0.05;

    /// <summary>Wider spacing lowers fanned stitches, which lowers the rows again; it settles at once.</summary>
    private const int Passes = 3;

    /// <summary>So many node moves are allowed: large pieces take fewer turns.</summary>
    private const long Budget = 100_000;
    private const int MostTurns = 80;
    private const int Steps = 30;

    /// <summary>Fans beside a straight strip are what makers draw: so much more of their symbols, in all, may lie over others than where the whole has come to rest.</summary>
    private const double Borne = 1.5;

    private readonly WorkedPiece piece;
    private readonly StitchForms forms;
    private readonly Construction construction;
    private PieceCells? counted;

    public Layouts(WorkedPiece worked, StitchForms forms)
    {
        piece = Rounded.Of(worked);
        this.forms = forms;
        construction = ConstructionFinder.Find(piece, forms);
    }

    /// <summary>The cells of the piece and the room that each takes.</summary>
    public PieceCells Cells => counted ??= new PieceCells(piece, forms, !IsTube);

    /// <summary>What it took.</summary>
    public Effort Effort { get; } = new();

    /// <summary>The rows in their places, with room made where symbols would lie over each other.</summary>
    /// <param name="former">Where the piece lay before it was edited; null to lay it out anew.</param>
    public IReadOnlyList<LaidRow> Lay(IReadOnlyList<LaidRow>? former = null) => Parts.Lay(piece, forms) ?? Straps.Lay(piece, forms) ?? Scalloped(former) ?? Cleared([.. AtRest(former)]);

    /// <summary>An edging with scallops at its side, where fans beside a straight strip have room; null for any other.</summary>
    private List<LaidRow>? Scalloped(IReadOnlyList<LaidRow>? former)
    {
        if (Scallops.Lay(piece, forms) is not { } fans) return null;
        (List<LaidRow> fanned, List<LaidRow> rested) = (Clearance.Of(fans), Cleared([.. AtRest(former)]));
        return Clearance.TroubleOf(fanned) <= Clearance.TroubleOf(rested) + Borne ? fanned : rested;
    }

    private List<LaidRow> Cleared(List<LaidRow> drawn)
    {
        List<LaidRow> cleared = Clearance.Of(drawn);
        return cleared != drawn && construction.Kind == ConstructionKind.StraightRows && EvenRows() ? StraightEdges.Of(cleared) : cleared;
    }

    /// <summary>The rows as the fabric rests, however close its symbols come.</summary>
    public IReadOnlyList<LaidRow> AtRest(IReadOnlyList<LaidRow>? former = null)
    {
        if (construction.Kind == ConstructionKind.Tiles && new Tiles(piece, forms).Lay() is { } tiles) return tiles;
        if (construction.Kind == ConstructionKind.Bordered && !HasGap() && new Borders(piece, Cells, forms, construction).Lay() is { } bordered && Strain.Of(bordered) < Framed) return bordered;
        List<LaidRow>? usual = HasNoGround ? null : Usual();
        if (usual is not null && IsAboutACentre && !IsTube && !HasGap() && new Gores(Cells, forms, usual).Lay() is { } peeled) return peeled;
        if (usual is not null && (HasGap() || IsRight(usual))) return construction.Kind == ConstructionKind.StraightRows && EvenRows() ? StraightEdges.Of(usual) : usual;
        if (former is not null && !HasGap() && FromFormer(former) is { } edited) return construction.Kind == ConstructionKind.StraightRows ? StraightEdges.Of(edited) : edited;
        List<LaidRow> best = Level.Of(Chosen(usual));
        return construction.Kind == ConstructionKind.StraightRows ? StraightEdges.Of(best) : best;
    }

    /// <summary>The rows one above the other as straight rows are, whatever the fabric does.</summary>
    public IReadOnlyList<LaidRow> InStraightRows() => Usual();

    /// <summary>The piece come to rest from where it lay; null where it changed too much, or would rest much worse than it did.</summary>
    private List<LaidRow>? FromFormer(IReadOnlyList<LaidRow> former)
    {
        if (Edited.Of(former, Cells, forms) is not var (rows, stay)) return null;
        List<LaidRow> rested = Relaxed.Staying(rows, stay, Turns, Steps, Effort);
        return Strain.Of(rested) <= (MostWorse * Strain.Of(former)) + Slack ? rested : null;
    }

    private List<LaidRow> Chosen(List<LaidRow>? usual)
    {
        (List<LaidRow>? best, double least) = (usual, usual is null ? double.MaxValue : Strain.Of(usual) * (IsInRounds ? Better : 1));
        if (usual is not null) Consider(Relaxed.Of(usual, Turns, Steps, effort: Effort));
        if (usual is null || (least > 2 * Easy && !IsInRounds)) Consider(Relaxed.Of([.. new Growth(Cells, forms).Lay()], Turns, Steps, effort: Effort));
        if (least > Folded && best is not null && piece.Rows.Sum(row => row.Length) <= MostUnfolded)
            Consider(Unfolded.Of(best, Turns, Steps, Effort), Clearly);
        return best ?? [.. new Growth(Cells, forms).Lay()];

        void Consider(List<LaidRow> other, double share = 1)
        {
            double strain = Strain.Of(other);
            if (strain >= least * share && best is not null) return;
            (best, least) = (other, strain);
        }
    }

    private bool IsInRounds => construction.InRounds || IsAboutACentre;

    private int Turns => (int)Math.Clamp(Budget / Math.Max(1, piece.Rows.Sum(row => row.Length)), 6, MostTurns);

    private bool IsRight(List<LaidRow> usual) => construction.Kind switch
    {
        _ when IsTube => true,
        ConstructionKind.Polygon or ConstructionKind.CornerToCorner => true,
        ConstructionKind.StraightRows => Lean.Of(usual) < Waves,
        _ when IsAboutACentre => piece.Rows.Sum(row => row.Length) > MostDrifting && Lean.Of(usual) < Astray && (piece.Rows.Sum(row => row.Length) > MostUnfolded || Strain.Of(usual) < Torn) || Lean.Of(usual) < Drifts || Strain.Of(usual) < Easy,
        _ => Strain.Of(usual) < Easy,
    };

    /// <summary>Rounds about one centre, flat or not: a disc, a hat from its crown, a shape to be stuffed.</summary>
    private bool IsAboutACentre =>
        construction.Kind is ConstructionKind.Circle || construction is { Kind: ConstructionKind.CrownAndTube, CrownLast: false }
        || construction.Kind == ConstructionKind.NotKnown && piece.Rows.All(row => row.Kind is RowKind.Round or RowKind.Foundation);

    private bool HasNoGround =>
        !HasGap() && ((construction.Kind is ConstructionKind.Oval && !IsTube) || construction.Kind is ConstructionKind.Tiles || (!Tones.InRounds(piece) && piece.Rows.Any(row => row.Kind == RowKind.Round)));

    /// <summary>A tube; also one begun on a chain that the first round joins, each chain worked into once.</summary>
    public bool IsTube => construction.Kind == ConstructionKind.Tube || (construction.Kind == ConstructionKind.Oval && OneSided());

    private bool OneSided()
    {
        WorkedRow first = piece.Rows.First(row => row.Index > 0);
        long[] places = [.. first.Cells().Where(cell => cell.Kind == CellKind.Stitch).SelectMany(cell => cell.Feet).Where(foot => foot.Row == 0).Select(foot => foot.Place)];
        return places.Length > 2 && places.Distinct().Count() == places.Length;
    }

    /// <summary>True where all rows have as many stitches, and so ends right above each other.</summary>
    private bool EvenRows() => !HasGap() && piece.Rows.Skip(1).Select(row => row.Kind == RowKind.Row ? RowTally.Of(row, forms).Places : -1).Distinct().Count() == 1;

    private bool HasGap() => piece.Rows.Any(row => row.Status != RowStatus.Checked);

    private List<LaidRow> Usual()
    {
        Ground ground = GroundOf();
        return Placings.OnPaper(Place(ground), ground, Cells);
    }

    /// <summary>A tube has no centre: its rounds lie flat, each begun at the same side.</summary>
    private Ground GroundOf() => construction.Kind switch
    {
        ConstructionKind.Polygon => new PolygonGround(construction.Corners),
        ConstructionKind.HalfCircle => new HalfRoundGround(),
        _ when IsTube => new FlatGround(),
        _ => Tones.InRounds(piece) ? new RoundGround() : new FlatGround(),
    };

    /// <summary>A square on its corner is drawn as one: its stitches are spaced so that the longest row is as long as all rows are high.</summary>
    private IReadOnlyList<PlacedRow> Place(Ground ground)
    {
        IReadOnlyList<PlacedRow> rows = new Placer(piece, Cells, forms, construction, ground, 1).Place();
        for (int pass = 0; construction.Kind == ConstructionKind.CornerToCorner && pass < Passes; pass++)
        {
            double height = rows[^1].High - rows[0].High;
            double stitches = rows.Max(row => row.Cells.Sum(cell => RowTally.Width(cell.Cell)));
            rows = new Placer(piece, Cells, forms, construction, ground, Math.Clamp(height / stitches, 0.6, 1.8)).Place();
        }
        return rows;
    }
}
