using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>The whole pattern row by row: stitches, width, yarn; finished sizes; yarn to buy.</summary>
/// <param name="Pieces">In the pattern's order.</param>
/// <param name="Yarn">Yarn for all pieces, each as often as it is made.</param>
public sealed record RowSchedule(EquatableArray<PieceSchedule> Pieces, Measured<YarnNeed> Yarn)
{
    /// <summary>Questions about the swatches, in sentences; empty where there are none.</summary>
    public EquatableArray<string> Doubts { get; init; }

    /// <summary>How far other makers' sizes will differ; null with fewer than two swatches in the gauge's stitch.</summary>
    public GaugeSpread? Spread { get; init; }

    /// <summary>Working time of everything made; null where not known.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>
    /// Computes the schedule of one size. Never throws on any pattern; what can't be known says why.
    /// </summary>
    /// <param name="pattern">The checked pattern.</param>
    /// <param name="swatch">The swatch; null where there is none, and then sizes and yarn are not known.</param>
    /// <param name="yarn">The ball band; null where not known, and then yarn is not known.</param>
    /// <param name="size">0-based index into <see cref="CheckedPattern.Sizes"/>.</param>
    public static Measured<RowSchedule> Compute(CheckedPattern pattern, Swatch? swatch, YarnLabel? yarn, int size = 0) => Compute(pattern, MeasuringBasis.Of(swatch, yarn), size);

    /// <summary>The same from several swatches, with hook, yarn weight and speed where they are known.</summary>
    public static Measured<RowSchedule> Compute(CheckedPattern pattern, MeasuringBasis basis, int size = 0)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(size, pattern.Sizes.Count);
        var worked = pattern.Sizes[size].Fabric.Pieces;
        if (worked.All(piece => piece.Rows.IsEmpty)) return Measured.NotKnown<RowSchedule>("There is no schedule yet: no rows were found in the text.");
        var design = new DesignRows(pattern, size, new StitchForms(pattern.Pattern));
        PieceSchedule[] pieces = new BallCount(basis).Follow(worked.Where(piece => !piece.Rows.IsEmpty)
            .Select(piece => new PieceScheduler(piece, Made(pattern, piece.Name, size), design, basis, pattern.Pattern.Source).Schedule()));
        var schedule = new RowSchedule(pieces.ToEquatableArray(), Need(pieces, basis)) { Doubts = DoubtsOf(basis), Spread = GaugeSpread.From(basis), Time = WholeTime(pieces) };
        return Measured.Known(schedule, "counts from the pattern; " + Origin(basis));
    }

    private static string Origin(MeasuringBasis basis) => basis.Gauge is not { } gauge ? "no swatch"
        : basis.IsStated ? $"gauge as the pattern states it, {gauge}"
        : basis.Swatches.Count > 1 ? $"swatch {gauge} and {basis.Swatches.Count - 1} more" : $"swatch {gauge}";

    private static EquatableArray<string> DoubtsOf(MeasuringBasis basis) =>
        basis.Swatches.SelectMany(swatch => SwatchDoubts.Of(swatch, basis.Yarn)).Concat(SwatchDoubts.Between(basis.Swatches)).Distinct().ToEquatableArray();

    /// <summary>A worked piece bears the name of its first section, where 'make 2' stands.</summary>
    private static int Made(CheckedPattern pattern, string name, int size) =>
        Math.Max(1, pattern.Pattern.Pieces.FirstOrDefault(piece => piece.Name == name)?.Make?.For(size) ?? 1);

    private static TimeSpan? WholeTime(PieceSchedule[] pieces) =>
        Array.TrueForAll(pieces, piece => piece.Time is not null) ? TimeSpan.FromMinutes(Math.Min(pieces.Sum(piece => piece.Time!.Value.TotalMinutes * piece.Made), 1e9)) : null;

    private static Measured<YarnNeed> Need(PieceSchedule[] pieces, MeasuringBasis basis)
    {
        if (Array.Find(pieces, piece => !piece.Yarn.IsKnown) is { } gap) return Measured.NotKnown<YarnNeed>(gap.Yarn.Trace);
        IEnumerable<ColourPrediction> colours = pieces
            .SelectMany(piece => piece.Predicted.Select(colour => (colour.Colour, Metres: colour.Metres.Times(piece.Made))))
            .GroupBy(colour => colour.Colour)
            .Select(same => ColourPrediction.Sum(same.Key, same.Select(colour => colour.Metres)));
        return Measured.Known(YarnNeed.From(colours, basis, pieces[0].Scale!), pieces[0].Yarn.Trace);
    }
}
