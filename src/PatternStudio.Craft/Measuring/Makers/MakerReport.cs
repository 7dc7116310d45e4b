using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring.Makers;

/// <summary>A gauge as counted: so many stitches and rows over a width and a height.</summary>
/// <param name="Stitches">Across <paramref name="Width"/>; null where not counted.</param>
/// <param name="Rows">Along <paramref name="Height"/>; null where not counted.</param>
/// <param name="Width">What the stitches were counted over; above 0.</param>
/// <param name="Height">What the rows were counted over; above 0.</param>
public sealed record CountedGauge(double? Stitches, double? Rows, Length Width, Length Height)
{
    private const double Ten = 10;

    /// <summary>Stitches to 10 cm.</summary>
    public double? StitchesToTen => Stitches / Width.Centimetres * Ten;

    /// <summary>Rows to 10 cm.</summary>
    public double? RowsToTen => Rows / Height.Centimetres * Ten;
}

/// <summary>What one maker reports of one piece. What she did not measure is null.</summary>
/// <param name="Maker">Who; makers of the same name are one.</param>
/// <param name="Size">0-based size that she made.</param>
public sealed record MakerReport(string Maker, int Size)
{
    /// <summary>As the piece will be: after blocking where it is blocked.</summary>
    public CountedGauge? Gauge { get; init; }

    /// <summary>Before blocking.</summary>
    public CountedGauge? BeforeBlocking { get; init; }

    /// <summary>The hook she ended with.</summary>
    public HookSize? Hook { get; init; }

    public Length? Width { get; init; }

    public Length? Height { get; init; }

    /// <summary>Yarn used, on the scales.</summary>
    public Mass? YarnUsed { get; init; }

    /// <summary>Her yarn's ball; null for the design's.</summary>
    public YarnLabel? Yarn { get; init; }

    public TimeSpan? Time { get; init; }
}

/// <summary>What is printed or predicted for one size. What is not known is null.</summary>
public sealed record ExpectedSize(Length? Width, Length? Height, YarnLength? Yarn, TimeSpan? Time);

/// <summary>What the pattern promises: makers' numbers are told as a ratio to these.</summary>
/// <param name="Gauge">The printed gauge; null where none is printed.</param>
/// <param name="Sizes">One for each size, in the pattern's order.</param>
/// <param name="Yarn">The design's ball; null where not known.</param>
public sealed record ExpectedNumbers(CountedGauge? Gauge, EquatableArray<ExpectedSize> Sizes, YarnLabel? Yarn)
{
    /// <summary>The hook that the pattern names; null where it names none.</summary>
    public HookSize? Hook { get; init; }

    internal ExpectedSize Of(int size) => size >= 0 && size < Sizes.Count ? Sizes[size] : new ExpectedSize(null, null, null, null);
}
