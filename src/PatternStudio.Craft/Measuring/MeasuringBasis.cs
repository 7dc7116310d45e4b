using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Measuring;

/// <summary>The ball of one colour, where it is not that of the others.</summary>
public sealed record ColourLabel(string Colour, YarnLabel Label);

/// <summary>What sizes and yarn are computed from: swatches, yarn, hook, the designer's speed.</summary>
/// <param name="Swatches">Swatches of the design; empty where there is none.</param>
/// <param name="Yarn">The ball band; null where not known.</param>
public sealed record MeasuringBasis(EquatableArray<Swatch> Swatches, YarnLabel? Yarn)
{
    /// <summary>0-based index of the swatch that is the design's gauge; the rest inform row heights and the spread.</summary>
    public int Chosen { get; init; }

    /// <summary>True where the one swatch is the gauge as the pattern states it, not measured fabric.</summary>
    public bool IsStated { get; init; }

    /// <summary>The standard's yarn weight, 0 to 7, for a rough guess where there is no weighed swatch; null where not known.</summary>
    public int? YarnWeight { get; init; }

    /// <summary>The hook, which narrows that guess; null where not known.</summary>
    public HookSize? Hook { get; init; }

    /// <summary>Stitches that the designer works in a minute, chains counted as stitches; null where not known.</summary>
    public double? StitchesPerMinute { get; init; }

    /// <summary>Balls of single colours that differ from <see cref="Yarn"/>.</summary>
    public EquatableArray<ColourLabel> Labels { get; init; }

    /// <summary>The gauge; null where there is no swatch.</summary>
    public Swatch? Gauge => Chosen >= 0 && Chosen < Swatches.Count ? Swatches[Chosen] : null;

    /// <summary>One swatch or none.</summary>
    public static MeasuringBasis Of(Swatch? swatch, YarnLabel? yarn) => new(swatch is null ? [] : [swatch], yarn);

    /// <summary>The ball of a colour; null where no ball band is known.</summary>
    public YarnLabel? LabelOf(string colour)
    {
        foreach (ColourLabel label in Labels)
            if (string.Equals(label.Colour, colour, StringComparison.OrdinalIgnoreCase))
                return label.Label;
        return Yarn;
    }
}
