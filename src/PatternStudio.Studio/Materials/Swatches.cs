using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Materials;

/// <summary>The swatches of a design. Whatever changes one of them computes the design anew.</summary>
public sealed class Swatches(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The swatches of a design, the newest first; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyList<KeptSwatch>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        Design? design = await context.DesignsOf(caller).AsNoTracking().FirstOrDefaultAsync(it => it.Id == designId, cancel);
        return design is null ? [] : Kept(await NewestFirst(context.Swatches.Where(swatch => swatch.DesignId == designId)).ToListAsync(cancel), design.SwatchId);
    }

    /// <summary>All designs that have swatches, by title, each with its own.</summary>
    public async Task<IReadOnlyList<DesignSwatches>> ListAllAsync(Caller caller, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        ILookup<Guid, Swatch> swatches = (await NewestFirst(context.SwatchesOf(caller)).ToListAsync(cancel)).ToLookup(swatch => swatch.DesignId);
        var designs = await context.DesignsOf(caller).AsNoTracking().OrderBy(design => design.TitleKey).ThenBy(design => design.Id)
            .Select(design => new { design.Id, design.Title, design.SwatchId }).ToListAsync(cancel);
        return [.. designs.Where(design => swatches.Contains(design.Id)).Select(design => new DesignSwatches(design.Id, design.Title, Kept(swatches[design.Id], design.SwatchId)))];
    }

    /// <summary>Adds a swatch; the first of a design is chosen to calibrate it. Gives its id.</summary>
    /// <param name="photo">Its photo; null for none.</param>
    public async Task<Outcome<Guid>> AddAsync(
        Caller caller, Guid designId, SwatchDetails details, PreparedPhoto? photo = null, CancellationToken cancel = default)
    {
        SwatchDetails tidy = Tidy(details);
        if (MaterialRefusals.OfSwatch(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<Outcome<Guid>>(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return Outcome.Refused(Refusals.NoDesign);
            if (!await HasYarnAsync(context, caller, tidy, cancel)) return Outcome.Refused(MaterialRefusals.NoYarnOfSwatch);
            bool isFirst = design.SwatchId is null && !await context.Swatches.AnyAsync(it => it.DesignId == designId, cancel);
            return await KeepAsync(context, design, tidy, photo, isFirst, cancel);
        }, cancel);
    }

    /// <summary>Corrects a swatch.</summary>
    /// <param name="before">The swatch as it was when the correction began: where it is another by now, nothing is written. Null to write in any case.</param>
    /// <param name="photo">What becomes of its photo; null to leave it.</param>
    public async Task<ChangeOutcome<SwatchDetails>> ChangeAsync(
        Caller caller, Guid swatchId, SwatchDetails details, SwatchDetails? before = null, PhotoChange? photo = null, CancellationToken cancel = default)
    {
        SwatchDetails tidy = Tidy(details);
        if (MaterialRefusals.OfSwatch(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync<ChangeOutcome<SwatchDetails>>(async context =>
        {
            Swatch? swatch = await context.SwatchesOf(caller).FirstOrDefaultAsync(it => it.Id == swatchId, cancel);
            if (swatch is null) return Outcome.Refused(MaterialRefusals.NoSwatch);
            if (!await HasYarnAsync(context, caller, tidy, cancel)) return Outcome.Refused(MaterialRefusals.NoYarnOfSwatch);
            if (before is not null && swatch.Details != before && swatch.Details != tidy) return ChangeOutcome.Overtaken(swatch.Details);
            Design design = await context.Designs.FirstAsync(it => it.Id == swatch.DesignId, cancel);
            swatch.Change(tidy);
            if (photo is not null) await ShowAsync(context, design, swatch, photo.With, cancel);
            await ReckonAsync(context, design, design.SwatchId, cancel);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Removes a swatch with its photo; where it calibrated the design, the design has none then.</summary>
    /// <returns>The swatch, so that it can be put back.</returns>
    public Task<Outcome<RemovedSwatch>> RemoveAsync(Caller caller, Guid swatchId, CancellationToken cancel = default) =>
        contexts.AttemptAsync<Outcome<RemovedSwatch>>(async context =>
        {
            Swatch? swatch = await context.SwatchesOf(caller).FirstOrDefaultAsync(it => it.Id == swatchId, cancel);
            if (swatch is null) return Outcome.Refused(MaterialRefusals.NoSwatch);
            Design design = await context.Designs.FirstAsync(it => it.Id == swatch.DesignId, cancel);
            bool gauged = design.SwatchId is not null;
            Photo? photo = swatch.PhotoId is { } photoId ? await context.Photos.FindAsync([photoId], cancel) : null;
            var removed = new RemovedSwatch(design.Id, swatch.Details, photo?.Prepared, design.SwatchId == swatchId);
            await ShowAsync(context, design, swatch, null, cancel);
            context.Swatches.Remove(swatch);
            if (gauged) await context.MeasureByAsync(design, removed.Chosen ? null : design.SwatchId, clock.Now(), cancel);
            await context.SaveChangesAsync(cancel);
            return removed;
        }, cancel);

    /// <summary>Puts a removed swatch back with its photo. It calibrates the design again where it did, unless another was chosen since.</summary>
    public Task<Outcome> PutBackAsync(Caller caller, RemovedSwatch removed, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == removed.DesignId, cancel);
            if (design is null) return Outcome.Refused(Refusals.NoDesign);
            if (!await HasYarnAsync(context, caller, removed.Details, cancel)) return Outcome.Refused(MaterialRefusals.NoYarnOfSwatch);
            await KeepAsync(context, design, removed.Details, removed.Photo, removed.Chosen && design.SwatchId is null, cancel);
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

    private async Task<Guid> KeepAsync(
        StudioDbContext context, Design design, SwatchDetails details, PreparedPhoto? photo, bool measures, CancellationToken cancel)
    {
        DateTimeOffset now = clock.Now();
        var swatch = new Swatch(Guid.CreateVersion7(now), design.Id, details);
        context.Swatches.Add(swatch);
        if (photo is not null) await ShowAsync(context, design, swatch, photo, cancel);
        await ReckonAsync(context, design, measures ? swatch.Id : design.SwatchId, cancel);
        await context.SaveChangesAsync(cancel);
        return swatch.Id;
    }

    /// <summary>Every swatch of a design that has a gauge tells something: how high other rows are, how much a hand varies.</summary>
    private async Task ReckonAsync(StudioDbContext context, Design design, Guid? gauge, CancellationToken cancel)
    {
        if (gauge is not null) await context.MeasureByAsync(design, gauge, clock.Now(), cancel);
    }

    /// <summary>Puts a photo in the place of the old one, which goes.</summary>
    private async Task ShowAsync(StudioDbContext context, Design design, Swatch swatch, PreparedPhoto? photo, CancellationToken cancel)
    {
        if (swatch.PhotoId is { } old && await context.Photos.FindAsync([old], cancel) is { } gone) context.Photos.Remove(gone);
        if (photo is null && swatch.PhotoId is null) return;
        DateTimeOffset now = clock.Now();
        Photo? kept = photo is null ? null : new Photo(Guid.CreateVersion7(now), design.StudioId, photo, now);
        if (kept is not null) context.Photos.Add(kept);
        swatch.Show(kept?.Id);
    }

    private static IQueryable<Swatch> NewestFirst(IQueryable<Swatch> swatches) =>
        swatches.AsNoTracking().OrderByDescending(swatch => swatch.MeasuredOn).ThenByDescending(swatch => swatch.Id);

    private static KeptSwatch[] Kept(IEnumerable<Swatch> swatches, Guid? chosen) =>
        [.. swatches.Select(swatch => new KeptSwatch(swatch.Id, swatch.Details, swatch.Id == chosen) { PhotoId = swatch.PhotoId })];

    private static async Task<bool> HasYarnAsync(StudioDbContext context, Caller caller, SwatchDetails details, CancellationToken cancel) =>
        details.YarnId is not { } yarnId || await context.YarnsOf(caller).AnyAsync(it => it.Id == yarnId, cancel);

    private static SwatchDetails Tidy(SwatchDetails details) => details with
    {
        Stitch = Wording.Tidy(details.Stitch).ToLowerInvariant(),
        Pattern = Wording.Tidy(details.Pattern),
        Note = Wording.Tidy(details.Note),
        Stitches = details.Counted == Counting.Rounds ? 0 : details.Stitches,
        StitchesEach = details.Counted == Counting.Repeats ? details.StitchesEach : null,
    };
}
