namespace PatternStudio.Studio.Materials;

/// <summary>What a design is measured by and made of.</summary>
/// <param name="Swatches">Its swatches, the one that is its gauge first; empty where it has no gauge.</param>
/// <param name="Yarn">The yarn it is made of; null for none.</param>
public sealed record DesignMaterials(IReadOnlyList<MeasuredSwatch> Swatches, YarnDetails? Yarn)
{
    /// <summary>Nothing at all.</summary>
    public static DesignMaterials None { get; } = new([], null);

    /// <summary>One swatch or none, in the design's yarn.</summary>
    public static DesignMaterials Of(SwatchDetails? swatch, YarnDetails? yarn) => new(swatch is null ? [] : [new(swatch, null)], yarn);

    /// <summary>From what the studio keeps of a design: its gauge first, then the other swatches in their order.</summary>
    public static DesignMaterials From(IEnumerable<KeptSwatch> swatches, IReadOnlyList<KeptYarn> yarns, Guid? yarnId)
    {
        KeptSwatch[] all = [.. swatches.OrderByDescending(swatch => swatch.Chosen)];
        return new(
            all is [{ Chosen: true }, ..] ? [.. all.Select(swatch => new MeasuredSwatch(swatch.Details, Find(swatch.Details.YarnId)))] : [],
            Find(yarnId));

        YarnDetails? Find(Guid? id) => yarns.FirstOrDefault(yarn => yarn.Id == id)?.Details;
    }
}

/// <summary>A swatch with the yarn it is worked in.</summary>
/// <param name="Yarn">Null where not noted: then the design's yarn is meant.</param>
public sealed record MeasuredSwatch(SwatchDetails Details, YarnDetails? Yarn);
