using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;
using PatternStudio.Craft.Working;

namespace PatternStudio.Craft.Measuring;

/// <summary>Makes the schedule of one piece.</summary>
/// <param name="piece">As worked.</param>
/// <param name="made">How many of it are made.</param>
/// <param name="design">The whole design's rows and stitches.</param>
/// <param name="basis">Swatches, yarn, speed.</param>
/// <param name="source">The pattern's text.</param>
internal sealed class PieceScheduler(WorkedPiece piece, int made, DesignRows design, MeasuringBasis basis, SourceText source)
{
    private readonly List<RowTally> tallies = [.. piece.Rows.Select(row => RowTally.Of(row, design.Forms))];
    private readonly Construction construction = ConstructionFinder.Find(piece, design.Forms);

    public PieceSchedule Schedule()
    {
        List<RowTally> rows = [.. Enumerable.Range(0, tallies.Count).Where(i => piece.Rows[i].Kind != RowKind.Foundation && Known(i)).Select(i => tallies[i])];
        Measured<Gauge> gauge = new GaugeFinder(basis, design).Find(rows, RingChains);
        PieceRuler? ruler = gauge.IsKnown ? new PieceRuler(construction, gauge.Value, rows, gauge.Value.StitchWidth * (RingChains / (2 * Math.PI))) : null;
        PieceSize size = Gap() is { } gap ? PieceSize.NotKnown("Not known: " + gap)
            : rows.Count == 0 ? PieceSize.NotKnown("Not known: the piece has no rows.")
            : ruler?.Measure() ?? PieceSize.NotKnown(gauge.Trace);
        Measured<YarnScale> scale = new YarnEvidence(basis, design, rows, construction.Grid?.Tiles ?? 0).Find(gauge.IsKnown ? gauge.Value : null);
        var lines = new RowLines(piece, tallies, construction.WhyNotWhole is null ? tallies.Count : FirstRound, source, ruler?.Widths() ?? [], scale.IsKnown ? scale.Value : null, basis.StitchesPerMinute);
        Measured<YarnLength> yarn = Yarn(scale);
        EquatableArray<SectionYarn> sections = yarn.IsKnown ? SectionsOf(scale.Value) : [];
        return new PieceSchedule(piece.Name, made, construction, size.Width, size.Height, PieceMarks.Add(lines.All(), construction, sections, Gap() is null && construction.WhyNotWhole is null, basis), yarn)
        {
            Around = size.Around,
            NotKnownFrom = Gap(),
            Colours = yarn.IsKnown ? [.. Colours(tallies).Select(colour => new ColourYarn(colour.Key, scale.Value.Of(colour.Value)))] : [],
            Sections = sections,
            HalfUsedAfter = lines.HalfUsedAfter,
            Time = lines.WholeTime,
            Predicted = yarn.IsKnown ? [.. Colours(tallies).Select(colour => new ColourPrediction(colour.Key, scale.Value.PerMaker.Times(colour.Value)))] : [],
            Scale = yarn.IsKnown ? scale.Value : null,
        };
    }

    private bool Known(int row) => piece.Rows[row].Status == RowStatus.Checked;

    /// <summary>The first row that was not checked; null where all were.</summary>
    private string? Gap() =>
        piece.Rows.FirstOrDefault(row => row.Status != RowStatus.Checked) is { } row
            ? $"from {RowLines.Label(row)} on the piece could not be checked, so size and yarn end there."
            : null;

    /// <summary>A ring of n chains is a circle n stitch widths round; a magic ring is drawn shut.</summary>
    private long RingChains => piece.Rows.FirstOrDefault(row => row.Joined && row.Kind == RowKind.Foundation) is { } ring ? ring.Chains() : 0;

    private Measured<YarnLength> Yarn(Measured<YarnScale> scale)
    {
        if (Gap() is { } gap) return Measured.NotKnown<YarnLength>("Yarn is not known: " + gap);
        if (construction.WhyNotWhole is { } border) return Measured.NotKnown<YarnLength>("Yarn is not known: " + border);
        if (tallies.Find(tally => tally.Unknown is not null) is { Unknown: { } stitch })
            return Measured.NotKnown<YarnLength>($"Yarn is not known: how '{stitch}' is worked can't be told; define it as a special stitch.");
        return scale.Then(known => known.Of(tallies.Sum(tally => tally.Yarn)));
    }

    /// <summary>Index of a border's first round, for the body's rows come before it without a gap.</summary>
    private int FirstRound => piece.Rows.TakeWhile(row => row.Kind != RowKind.Round).Count();

    /// <summary>Relative yarn by colour, in the order that colours first come.</summary>
    private static IEnumerable<KeyValuePair<string, double>> Colours(IEnumerable<RowTally> some) =>
        some.SelectMany(tally => tally.YarnByColour).GroupBy(pair => pair.Key, pair => pair.Value)
            .Select(colour => new KeyValuePair<string, double>(colour.Key, colour.Sum())).Where(colour => colour.Value > 0);

    /// <summary>Sections as headed; a border without a heading is one too.</summary>
    private EquatableArray<SectionYarn> SectionsOf(YarnScale scale)
    {
        var sections = new List<SectionYarn>();
        int foundations = piece.Rows.TakeWhile(row => row.Kind == RowKind.Foundation).Count();
        for (int start = 0, end; start < tallies.Count; start = end)
        {
            end = start + 1;
            while (end < tallies.Count && piece.Rows[end].Section == piece.Rows[start].Section && !(construction.FirstRows > 0 && construction.Kind == ConstructionKind.Bordered && end == foundations + construction.FirstRows)) end++;
            List<RowTally> some = tallies[start..end];
            bool isBorder = construction.Kind == ConstructionKind.Bordered && start >= foundations + construction.FirstRows;
            string name = piece.Rows[start].Section is { Length: > 0 } headed && !(isBorder && headed == piece.Rows[0].Section) ? headed : isBorder ? "border" : piece.Rows[start].Section;
            sections.Add(new SectionYarn(name, RowLines.Label(piece.Rows[start]), scale.Of(some.Sum(tally => tally.Yarn)), [.. Colours(some).Select(colour => new ColourYarn(colour.Key, scale.Of(colour.Value)))]));
        }

        return sections.Count > 1 ? sections.ToEquatableArray() : [];
    }
}
