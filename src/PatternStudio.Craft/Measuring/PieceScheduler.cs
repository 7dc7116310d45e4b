using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>Makes the schedule of one piece.</summary>
internal sealed class PieceScheduler(WorkedPiece piece, int made, StitchForms forms, Swatch? swatch, YarnLabel? yarn)
{
    private const double Rounding = 1e-6;

    private readonly List<RowTally> tallies = [.. piece.Rows.Select(row => RowTally.Of(row, forms))];
    private readonly Construction construction = ConstructionFinder.Find(piece, forms);

    public PieceSchedule Schedule()
    {
        List<RowTally> rows = [.. Enumerable.Range(0, tallies.Count).Where(i => piece.Rows[i].Kind != RowKind.Foundation && Known(i)).Select(i => tallies[i])];
        Measured<Gauge> gauge = Gauge.From(swatch, rows, forms);
        PieceRuler? ruler = gauge.IsKnown ? new PieceRuler(construction, gauge.Value, rows, RingRadius(gauge.Value)) : null;
        PieceSize size = Gap() is { } gap ? PieceSize.NotKnown("Not known: " + gap)
            : rows.Count == 0 ? PieceSize.NotKnown("Not known: the piece has no rows.")
            : ruler?.Measure() ?? PieceSize.NotKnown(gauge.Trace);
        Measured<YarnScale> model = YarnScale.From(swatch, yarn, YarnPerStitch(rows));
        return new PieceSchedule(piece.Name, made, construction, size.Width, size.Height, Rows(ruler, model), Yarn(model))
        {
            NotKnownFrom = Gap(),
            Colours = Colours(model),
            HalfUsedAfter = Half(),
        };
    }

    private bool Known(int row) => piece.Rows[row].Status == RowStatus.Checked;

    /// <summary>The first row that was not checked; null where all were.</summary>
    private string? Gap() =>
        piece.Rows.FirstOrDefault(row => row.Status != RowStatus.Checked) is { } row
            ? $"from {Label(row)} on the piece could not be checked, so size and yarn end there."
            : null;

    private static string Label(WorkedRow row) => row.Label.Length > 0 ? row.Label : $"row {row.Number}";

    /// <summary>A ring of n chains is a circle n stitch widths round; a magic ring is drawn shut.</summary>
    private Length RingRadius(Gauge gauge) =>
        piece.Rows.FirstOrDefault(row => row.Joined && row.Kind == RowKind.Foundation) is { } ring ? gauge.StitchWidth * (ring.Chains() / (2 * Math.PI)) : Length.Zero;

    /// <summary>Relative yarn of one stitch of the swatch: of its named stitch, or the mean over the rows (all their chains included).</summary>
    private double YarnPerStitch(List<RowTally> rows)
    {
        if (swatch?.Stitch is { } stitch) return forms.Of(stitch).Yarn;
        long places = Math.Max(1, rows.Sum(row => row.Places));
        return rows.Exists(row => row.Unknown is not null) ? 0 : (double)rows.Sum(row => row.Yarn) / places;
    }

    private EquatableArray<ScheduledRow> Rows(PieceRuler? ruler, Measured<YarnScale> model)
    {
        var widths = new Queue<Length>(ruler is not null && construction.Kind is not (ConstructionKind.NotKnown or ConstructionKind.Tiles or ConstructionKind.Oval) ? ruler.Widths() : []);
        var rows = new List<ScheduledRow>(tallies.Count);
        double used = 0;
        bool whole = true;
        for (int i = 0; i < tallies.Count; i++)
        {
            WorkedRow row = piece.Rows[i];
            bool known = Known(i) && tallies[i].Unknown is null;
            whole &= known;
            used += tallies[i].Yarn;
            Length? width = row.Kind != RowKind.Foundation && Known(i) && widths.TryDequeue(out Length there) && whole ? there : null;
            YarnLength? yarnOfRow = known && model.IsKnown ? model.Value.Of(tallies[i].Yarn) : null;
            YarnLength? total = whole && model.IsKnown ? model.Value.Of(used) : null;
            rows.Add(new ScheduledRow(row.Number, Label(row), row.Side == FabricSide.Right ? "RS" : "WS", Known(i) ? row.Total : null, Change(i), width, yarnOfRow, total));
        }
        return rows.ToEquatableArray();
    }

    /// <summary>Nothing is compared with a foundation: its chains are no stitches yet.</summary>
    private long? Change(int row) =>
        row > 0 && piece.Rows[row - 1].Kind != RowKind.Foundation && Known(row) && Known(row - 1) ? piece.Rows[row].Total - piece.Rows[row - 1].Total : null;

    private Measured<YarnLength> Yarn(Measured<YarnScale> model)
    {
        if (Gap() is { } gap) return Measured.NotKnown<YarnLength>("Yarn is not known: " + gap);
        if (tallies.Find(tally => tally.Unknown is not null) is { Unknown: { } stitch })
            return Measured.NotKnown<YarnLength>($"Yarn is not known: how '{stitch}' is worked can't be told; define it as a special stitch.");
        return model.Then(known => known.Of(tallies.Sum(tally => tally.Yarn)));
    }

    private EquatableArray<ColourYarn> Colours(Measured<YarnScale> model) => !Yarn(model).IsKnown
        ? []
        : tallies.SelectMany(tally => tally.YarnByColour)
            .GroupBy(pair => pair.Key, pair => pair.Value)
            .Select(colour => new ColourYarn(colour.Key, model.Value.Of(colour.Sum())))
            .Where(colour => colour.Length > YarnLength.Zero)
            .ToEquatableArray();

    /// <summary>Needs no scale: half of the relative yarn is half of the metres.</summary>
    private string? Half()
    {
        if (Gap() is not null || tallies.Exists(tally => tally.Unknown is not null)) return null;
        double all = tallies.Sum(tally => tally.Yarn);
        double used = 0;
        for (int i = 0; i < tallies.Count; i++)
        {
            used += tallies[i].Yarn;
            if (used * 2 >= all - Rounding && all > 0) return Label(piece.Rows[i]);
        }
        return null;
    }
}
