using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>The whole pattern row by row: stitches, width, yarn; finished sizes; yarn to buy.</summary>
/// <param name="Pieces">In the pattern's order.</param>
/// <param name="Yarn">Yarn for all pieces, each as often as it is made.</param>
public sealed record RowSchedule(EquatableArray<PieceSchedule> Pieces, Measured<YarnNeed> Yarn)
{
    /// <summary>
    /// Computes the schedule of one size. Never throws on any pattern; what can't be known says why.
    /// </summary>
    /// <param name="pattern">The checked pattern.</param>
    /// <param name="swatch">The swatch; null where there is none, and then sizes and yarn are not known.</param>
    /// <param name="yarn">The ball band; null where not known, and then yarn is not known.</param>
    /// <param name="size">0-based index into <see cref="CheckedPattern.Sizes"/>.</param>
    public static Measured<RowSchedule> Compute(CheckedPattern pattern, Swatch? swatch, YarnLabel? yarn, int size = 0)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(size, pattern.Sizes.Count);
        var worked = pattern.Sizes[size].Fabric.Pieces;
        if (worked.All(piece => piece.Rows.IsEmpty)) return Measured.NotKnown<RowSchedule>("There is no schedule yet: no rows were found in the text.");
        var forms = new StitchForms(pattern.Pattern);
        PieceSchedule[] pieces = [.. worked.Where(piece => !piece.Rows.IsEmpty).Select(piece => new PieceScheduler(piece, Made(pattern, piece.Name, size), forms, swatch, yarn).Schedule())];
        var schedule = new RowSchedule(pieces.ToEquatableArray(), Need(pieces, yarn));
        return Measured.Known(schedule, swatch is null ? "counts from the pattern; no swatch" : $"counts from the pattern; swatch {swatch}");
    }

    /// <summary>A worked piece bears the name of its first section, where 'make 2' stands.</summary>
    private static int Made(CheckedPattern pattern, string name, int size) =>
        Math.Max(1, pattern.Pattern.Pieces.FirstOrDefault(piece => piece.Name == name)?.Make?.For(size) ?? 1);

    private static Measured<YarnNeed> Need(PieceSchedule[] pieces, YarnLabel? yarn)
    {
        if (Array.Find(pieces, piece => !piece.Yarn.IsKnown) is { } gap) return Measured.NotKnown<YarnNeed>(gap.Yarn.Trace);
        IEnumerable<ColourYarn> colours = pieces
            .SelectMany(piece => piece.Colours.Select(colour => colour with { Length = colour.Length * piece.Made }))
            .GroupBy(colour => colour.Colour)
            .Select(same => new ColourYarn(same.Key, YarnNeed.Sum(same.Select(colour => colour.Length))));
        return Measured.Known(YarnNeed.From(colours, yarn!), pieces[0].Yarn.Trace);
    }
}
