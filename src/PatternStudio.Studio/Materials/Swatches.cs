using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>The swatches of a design. Whatever changes the one that calibrates it computes the design anew.</summary>
public sealed class Swatches(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The swatches of a design, the newest first; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyList<KeptSwatch>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        Design? design = await context.DesignsOf(caller).AsNoTracking().FirstOrDefaultAsync(it => it.Id == designId, cancel);
        if (design is null) return [];
        List<Swatch> swatches = await context.Swatches.AsNoTracking()
            .Where(swatch => swatch.DesignId == designId)
            .OrderByDescending(swatch => swatch.MeasuredOn).ThenByDescending(swatch => swatch.Id)
            .ToListAsync(cancel);
        return [.. swatches.Select(swatch => new KeptSwatch(swatch.Id, swatch.Details, swatch.Id == design.SwatchId))];
    }

    /// <summary>Adds a swatch; the first of a design is chosen to calibrate it. Gives its id.</summary>
    public async Task<Outcome<Guid>> AddAsync(Caller caller, Guid designId, SwatchDetails details, CancellationToken cancel = default)
    {
        SwatchDetails tidy = Tidy(details);
        if (MaterialRefusals.OfSwatch(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<Outcome<Guid>>(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return Outcome.Refused(Refusals.NoDesign);
            if (!await HasYarnAsync(context, caller, tidy, cancel)) return Outcome.Refused(MaterialRefusals.NoYarnOfSwatch);
            return await AddAsync(context, design, tidy, cancel);
        }, cancel);
    }

    /// <summary>Corrects a swatch.</summary>
    public async Task<Outcome> ChangeAsync(Caller caller, Guid swatchId, SwatchDetails details, CancellationToken cancel = default)
    {
        SwatchDetails tidy = Tidy(details);
        if (MaterialRefusals.OfSwatch(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync(async context =>
        {
            Swatch? swatch = await context.SwatchesOf(caller).FirstOrDefaultAsync(it => it.Id == swatchId, cancel);
            if (swatch is null) return Outcome.Refused(MaterialRefusals.NoSwatch);
            if (!await HasYarnAsync(context, caller, tidy, cancel)) return Outcome.Refused(MaterialRefusals.NoYarnOfSwatch);
            swatch.Change(tidy);
            await ReckonChosenAsync(context, swatch, swatchId, cancel);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Removes a swatch; where it calibrated the design, the design has none then.</summary>
    public Task<Outcome> RemoveAsync(Caller caller, Guid swatchId, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            Swatch? swatch = await context.SwatchesOf(caller).FirstOrDefaultAsync(it => it.Id == swatchId, cancel);
            if (swatch is null) return Outcome.Refused(MaterialRefusals.NoSwatch);
            await ReckonChosenAsync(context, swatch, null, cancel);
            context.Swatches.Remove(swatch);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    /// <summary>Chooses the swatch that calibrates a design; null for none.</summary>
    public Task<Outcome> ChooseAsync(Caller caller, Guid designId, Guid? swatchId, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return Outcome.Refused(Refusals.NoDesign);
            if (swatchId is { } id)
            {
                Swatch? swatch = await context.SwatchesOf(caller).FirstOrDefaultAsync(it => it.Id == id, cancel);
                if (swatch is null) return Outcome.Refused(MaterialRefusals.NoSwatch);
                if (swatch.DesignId != designId) return Outcome.Refused(MaterialRefusals.SwatchOfAnother);
            }

            await context.MeasureByAsync(design, swatchId, clock.Now(), cancel);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    private async Task<Outcome<Guid>> AddAsync(StudioDbContext context, Design design, SwatchDetails details, CancellationToken cancel)
    {
        DateTimeOffset now = clock.Now();
        bool first = !await context.Swatches.AnyAsync(it => it.DesignId == design.Id, cancel);
        var swatch = new Swatch(Guid.CreateVersion7(now), design.Id, details);
        context.Swatches.Add(swatch);
        if (first) await context.MeasureByAsync(design, swatch.Id, now, cancel);
        await context.SaveChangesAsync(cancel);
        return swatch.Id;
    }

    /// <summary>Where the swatch calibrates its design: measures the design by another (or the same, changed) and computes it anew.</summary>
    private async Task ReckonChosenAsync(StudioDbContext context, Swatch swatch, Guid? by, CancellationToken cancel)
    {
        Design design = await context.Designs.FirstAsync(it => it.Id == swatch.DesignId, cancel);
        if (design.SwatchId == swatch.Id) await context.MeasureByAsync(design, by, clock.Now(), cancel);
    }

    private static async Task<bool> HasYarnAsync(StudioDbContext context, Caller caller, SwatchDetails details, CancellationToken cancel) =>
        details.YarnId is not { } yarnId || await context.YarnsOf(caller).AnyAsync(it => it.Id == yarnId, cancel);

    private static SwatchDetails Tidy(SwatchDetails details) => details with
    {
        Stitch = Wording.Tidy(details.Stitch).ToLowerInvariant(),
        Note = Wording.Tidy(details.Note),
    };
}
