using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Measuring;
using PatternStudio.Craft.Measuring.Makers;
using PatternStudio.Craft.Text;
using PatternStudio.Studio.Materials;
using Length = PatternStudio.Craft.Measuring.Length;

namespace PatternStudio.Studio.Rounds;

/// <summary>What a version promises: its printed gauge and hook, and what is predicted for each size.</summary>
/// <param name="Numbers">The numbers.</param>
/// <param name="Sizes">The sizes' names; one empty name where there is one.</param>
internal sealed record Expectation(ExpectedNumbers Numbers, IReadOnlyList<string> Sizes)
{
    /// <summary>Computes a version.</summary>
    public static Expectation Of(string text, DesignMaterials materials)
    {
        CheckedPattern pattern = PatternCheck.Check(text);
        MeasuringBasis stated = StatedMaterials.Of(pattern), basis = materials.ToBasis(pattern);
        var numbers = new ExpectedNumbers(
            Gauge(stated.Gauge) ?? Gauge(basis.Gauge),
            Enumerable.Range(0, pattern.Sizes.Count).Select(size => OfSize(RowSchedule.Compute(pattern, basis, size))).ToEquatableArray(),
            basis.Yarn ?? stated.Yarn) { Hook = stated.Hook ?? basis.Hook };
        return new Expectation(numbers, [.. pattern.Sizes.Select(size => size.Name)]);
    }

    /// <summary>Counts of another stitch or of repeats are not what testers count.</summary>
    private static CountedGauge? Gauge(PatternStudio.Craft.Measuring.Swatch? swatch) =>
        swatch is { Kind: SwatchKind.Stitches } ? new CountedGauge(swatch.Stitches, swatch.Rows > 0 ? swatch.Rows : null, swatch.Width, swatch.Height) : null;

    private static ExpectedSize OfSize(Measured<RowSchedule> schedule)
    {
        if (!schedule.IsKnown) return new ExpectedSize(null, null, null, null);
        PieceSchedule[] pieces = [.. schedule.Value.Pieces.Where(piece => piece.Rows.Any(row => row.Number > 0))];
        return new ExpectedSize(
            pieces is [var only] ? Known(only.Width) : null,
            pieces is [var one] ? Known(one.Height) : null,
            schedule.Value.Yarn is { IsKnown: true } yarn ? yarn.Value.Used : null,
            schedule.Value.Time);
    }

    private static Length? Known(Measured<Length> length) => length.IsKnown ? length.Value : null;
}
