using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Designs;

/// <summary>Computes a design from what is in the context, and lays the results beside it to be saved with it.</summary>
internal static class Reckoning
{
    /// <summary>Computes the latest version of a design anew. Saving is the caller's.</summary>
    public static async Task<Results> ReckonAsync(
        this StudioDbContext context, Design design, DateTimeOffset now, CancellationToken cancel)
    {
        Reckoned reckoned = DesignResults.Reckon(design.Text, await context.MaterialsOfAsync(design, cancel));
        await context.KeepAsync(design, reckoned, now, cancel);
        return reckoned.Results;
    }

    /// <summary>Calibrates a design by a swatch (null for none) and computes it anew.</summary>
    public static Task MeasureByAsync(
        this StudioDbContext context, Design design, Guid? swatchId, DateTimeOffset now, CancellationToken cancel)
    {
        design.MeasureBy(swatchId, now);
        return context.ReckonAsync(design, now, cancel);
    }

    /// <summary>Makes a design of a yarn (null for none) and computes it anew.</summary>
    public static Task MakeOfAsync(
        this StudioDbContext context, Design design, Guid? yarnId, DateTimeOffset now, CancellationToken cancel)
    {
        design.MakeOf(yarnId, now);
        return context.ReckonAsync(design, now, cancel);
    }

    /// <summary>The swatches and the yarn of a design as they are in this context, saved or not.</summary>
    public static async Task<DesignMaterials> MaterialsOfAsync(this StudioDbContext context, Design design, CancellationToken cancel)
    {
        Yarn? yarn = await context.YarnOfAsync(design, cancel);
        if (design.SwatchId is null) return new DesignMaterials([], yarn?.Details);
        await context.Swatches.Where(swatch => swatch.DesignId == design.Id).LoadAsync(cancel);
        Swatch[] swatches = [.. context.Swatches.Local.Where(swatch => swatch.DesignId == design.Id)];
        Guid?[] yarnIds = [.. swatches.Select(swatch => swatch.YarnId).Where(id => id is not null).Distinct()];
        await context.Yarns.Where(it => yarnIds.Contains(it.Id)).LoadAsync(cancel);
        return new DesignMaterials(
            [
                .. swatches.OrderByDescending(swatch => swatch.Id == design.SwatchId).ThenByDescending(swatch => swatch.MeasuredOn).ThenByDescending(swatch => swatch.Id)
                    .Select(swatch => new MeasuredSwatch(swatch.Details, context.Yarns.Local.FirstOrDefault(it => it.Id == swatch.YarnId)?.Details)),
            ],
            yarn?.Details);
    }

    /// <summary>The swatch that calibrates a design, as it is in this context.</summary>
    public static async Task<Swatch?> SwatchOfAsync(this StudioDbContext context, Design design, CancellationToken cancel) =>
        design.SwatchId is { } id ? await context.Swatches.FindAsync([id], cancel) : null;

    /// <summary>The yarn of a design, as it is in this context.</summary>
    public static async Task<Yarn?> YarnOfAsync(this StudioDbContext context, Design design, CancellationToken cancel) =>
        design.YarnId is { } id ? await context.Yarns.FindAsync([id], cancel) : null;

    /// <summary>Drops the whole results of older versions, whose summaries stay. Runs at once.</summary>
    public static Task ThinOutAsync(this StudioDbContext context, Design design, CancellationToken cancel) =>
        context.Computations
            .Where(it => it.DesignId == design.Id && it.Version < design.LatestVersion && it.Whole != null)
            .ExecuteUpdateAsync(set => set.SetProperty(it => it.Whole, (byte[]?)null), cancel);

    private static async Task KeepAsync(
        this StudioDbContext context, Design design, Reckoned reckoned, DateTimeOffset now, CancellationToken cancel)
    {
        Computation? kept = await context.Computations.FindAsync([design.Id, design.LatestVersion], cancel);
        bool sameMake = kept?.EngineVersion == reckoned.Results.EngineVersion;
        if (kept is null)
            context.Computations.Add(new Computation(design.Id, design.LatestVersion, reckoned.Results, now));
        else
            kept.Take(reckoned.Results, now);
        await context.ShowAsync(design, reckoned, sameMake, cancel);
    }

    /// <summary>The picture is drawn where the words or the program are others than before: a swatch or a yarn changes numbers only.</summary>
    private static async Task ShowAsync(this StudioDbContext context, Design design, Reckoned reckoned, bool sameMake, CancellationToken cancel)
    {
        DesignFace? face = await context.Faces.FindAsync([design.Id], cancel);
        string words = Design.KeyOf(design.Text);
        bool sameWords = face is not null && face.Words == words;
        face ??= context.Faces.Add(new DesignFace(design.Id)).Entity;
        face.Show(words, reckoned.Results);
        if (!sameWords || !sameMake) face.Draw(SmallChart.Draw(reckoned.Pattern));
    }
}
