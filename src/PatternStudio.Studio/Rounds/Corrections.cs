using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Rounds;

/// <summary>A correction as kept.</summary>
/// <param name="Changed">The day on which it was last said otherwise; null for never.</param>
/// <param name="Withdrawn">The day on which it was withdrawn; null while it holds.</param>
/// <param name="Earlier">What it said before, the latest first: <see cref="CorrectionDetails.On"/> is the day from which it said so.</param>
public sealed record KeptCorrection(Guid Id, CorrectionDetails Details, DateOnly? Changed, DateOnly? Withdrawn, IReadOnlyList<CorrectionDetails> Earlier);

/// <summary>What everybody may read of a published design: its title and what was corrected.</summary>
public sealed record CorrectionSheet(string Title, string Studio, IReadOnlyList<KeptCorrection> Corrections);

/// <summary>Corrections of published designs.</summary>
public sealed class Corrections(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The corrections of a design, the newest first.</summary>
    public async Task<IReadOnlyList<KeptCorrection>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.DesignsOf(caller).AnyAsync(it => it.Id == designId, cancel) ? await ListAsync(context, designId, cancel) : [];
    }

    /// <summary>The public address of a design's corrections; made at the first asking. Refused while the design is not published.</summary>
    public Task<Outcome<Guid>> AddressAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        contexts.AttemptAsync<Outcome<Guid>>(async context =>
        {
            if (await FaultAsync(context, caller, designId, cancel) is { } fault) return Outcome.Refused(fault);
            CorrectionPage? page = await context.CorrectionPages.FirstOrDefaultAsync(it => it.DesignId == designId, cancel);
            if (page is not null) return page.Id;
            // Of chance alone: a number that tells the time would tell when the design was made.
            page = new CorrectionPage(Guid.NewGuid(), designId);
            context.CorrectionPages.Add(page);
            await context.SaveChangesAsync(cancel);
            return page.Id;
        }, cancel);

    /// <summary>Adds a correction. Gives its id.</summary>
    public async Task<Outcome<Guid>> AddAsync(Caller caller, Guid designId, CorrectionDetails details, CancellationToken cancel = default)
    {
        CorrectionDetails tidy = details with { Words = Wording.Tidy(details.Words) };
        if (Faults(tidy.Words) is { Length: > 0 } faults) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (await FaultAsync(context, caller, designId, cancel) is { } fault) return Outcome.Refused(fault);
        if (!await context.Versions.AnyAsync(it => it.DesignId == designId && it.Number == tidy.Version, cancel)) return Outcome.Refused(RoundRefusals.NoVersion);
        var correction = new Correction(Guid.CreateVersion7(clock.Now()), designId, tidy);
        context.Corrections.Add(correction);
        await context.SaveChangesAsync(cancel);
        return correction.Id;
    }

    /// <summary>Says a correction otherwise. Everybody goes on reading what it said before, and since when.</summary>
    /// <param name="details">What it says now; <see cref="CorrectionDetails.On"/> is the day of the change.</param>
    public async Task<Outcome> ChangeAsync(Caller caller, Guid correctionId, CorrectionDetails details, CancellationToken cancel = default)
    {
        CorrectionDetails tidy = details with { Words = Wording.Tidy(details.Words) };
        if (Faults(tidy.Words) is { Length: > 0 } faults) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (await FindAsync(context, caller, correctionId, cancel) is not { } correction) return Outcome.Refused(RoundRefusals.NoCorrection);
        if (correction.Withdrawn is not null) return Outcome.Refused(RoundRefusals.Withdrawn);
        if (!await context.Versions.AnyAsync(it => it.DesignId == correction.DesignId && it.Number == tidy.Version, cancel)) return Outcome.Refused(RoundRefusals.NoVersion);
        if (correction.Version == tidy.Version && correction.Words == tidy.Words) return Outcome.Done;
        context.CorrectionWordings.Add(new CorrectionWording(Guid.CreateVersion7(clock.Now()), correction));
        correction.Change(tidy.Version, tidy.Words, tidy.On);
        await context.SaveChangesAsync(cancel);
        return Outcome.Done;
    }

    /// <summary>Withdraws a correction that was none. It stays on the page, struck through, since somebody may have followed it.</summary>
    public async Task<Outcome> WithdrawAsync(Caller caller, Guid correctionId, DateOnly on, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (await FindAsync(context, caller, correctionId, cancel) is not { } correction) return Outcome.Refused(RoundRefusals.NoCorrection);
        correction.Withdraw(on);
        await context.SaveChangesAsync(cancel);
        return Outcome.Done;
    }

    /// <summary>What a public address shows; null where there is none such, or the design is not published any more.</summary>
    public async Task<CorrectionSheet?> FindAsync(Guid pageId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        var found = await (
            from page in context.CorrectionPages
            where page.Id == pageId
            join design in context.Designs on page.DesignId equals design.Id
            where design.Deleted == null && design.State == DesignState.Published
            join studio in context.Studios on design.StudioId equals studio.Id
            select new { design.Id, design.Title, studio.Name }).FirstOrDefaultAsync(cancel);
        return found is null ? null : new CorrectionSheet(found.Title, found.Name, await ListAsync(context, found.Id, cancel));
    }

    private static async Task<IReadOnlyList<KeptCorrection>> ListAsync(StudioDbContext context, Guid designId, CancellationToken cancel)
    {
        List<Correction> corrections = await context.Corrections.AsNoTracking().Where(it => it.DesignId == designId).OrderByDescending(it => it.On).ThenByDescending(it => it.Id).ToListAsync(cancel);
        ILookup<Guid, CorrectionWording> earlier = (await context.CorrectionWordings.AsNoTracking()
            .Where(it => context.Corrections.Any(correction => correction.Id == it.CorrectionId && correction.DesignId == designId)).OrderByDescending(it => it.Id).ToListAsync(cancel))
            .ToLookup(it => it.CorrectionId);
        return [.. corrections.Select(it => new KeptCorrection(
            it.Id, new(it.On, it.Version, it.Words), it.Changed, it.Withdrawn, [.. earlier[it.Id].Select(before => new CorrectionDetails(before.Since, before.Version, before.Words))]))];
    }

    private static FieldMessage[] Faults(string words) => words.Length == 0
        ? [new(nameof(CorrectionDetails.Words), "Say what was wrong and what is right.")]
        : [.. Wording.ShortFaults(nameof(CorrectionDetails.Words), "The correction", words, Correction.WordsLength)];

    private static Task<Correction?> FindAsync(StudioDbContext context, Caller caller, Guid correctionId, CancellationToken cancel) =>
        context.Corrections.FirstOrDefaultAsync(it => it.Id == correctionId && context.DesignsOf(caller).Any(design => design.Id == it.DesignId), cancel);

    private static async Task<FieldMessage?> FaultAsync(StudioDbContext context, Caller caller, Guid designId, CancellationToken cancel)
    {
        DesignState? state = await context.DesignsOf(caller).Where(it => it.Id == designId).Select(it => (DesignState?)it.State).FirstOrDefaultAsync(cancel);
        return state switch { null => Refusals.NoDesign, DesignState.Published => null, _ => RoundRefusals.NotPublished };
    }
}
