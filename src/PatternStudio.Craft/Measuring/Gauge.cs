namespace PatternStudio.Craft.Measuring;

/// <summary>What the swatches say about one piece: the width of a stitch and the height of a row of given stitches.</summary>
/// <param name="StitchWidth">Width of one stitch.</param>
/// <param name="PerHeight">Height of fabric for one unit of <see cref="StitchForm.Height"/>.</param>
/// <param name="Trace">The swatch and how it was applied.</param>
internal sealed record Gauge(Length StitchWidth, Length PerHeight, string Trace)
{
    /// <summary>Heights of single kinds of stitch, by their height in stitch widths, where several swatches tell them apart.</summary>
    public IReadOnlyDictionary<double, Length> Kinds { get; init; } = new Dictionary<double, Length>();

    /// <summary>Why no height is known though widths are; null where heights are known.</summary>
    public string? WhyNoHeight { get; init; }

    /// <summary>True where the stitch's width is taken from its height by the usual proportion and was not measured: good for discs and motifs alone.</summary>
    public bool IsWidthAssumed { get; init; }

    /// <summary>The size of one tile, where the swatch was counted in tiles.</summary>
    public FabricSize? Tile { get; init; }

    public Length HeightOf(RowTally row)
    {
        if (Kinds.Count == 0 || row.Heights.Count == 0) return PerHeight * row.Height;
        Length sum = Length.Zero;
        foreach ((double height, double share) in row.Heights)
            sum += (Kinds.TryGetValue(height, out Length measured) ? measured : PerHeight * height) * share;
        return sum;
    }
}
