using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs.Comparing;

namespace PatternStudio.Studio.Designs;

/// <summary>Opens, writes and saves one design.</summary>
public sealed class DesignDesk(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock, SavedNews news)
{
    /// <summary>Opens a design; null where the caller's studio has none of that id, or it was deleted.</summary>
    /// <remarks>Results that another version of the engine computed are computed anew and stored.</remarks>
    public Task<OpenDesign?> OpenAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return null;
            Results results = await StoredOrFreshAsync(context, design, cancel);
            return new OpenDesign(
                design.Id, design.Title, design.State, design.Text, design.LatestVersion, design.SwatchId, design.YarnId, design.Updated, results)
            {
                Swatch = (await context.SwatchOfAsync(design, cancel))?.Details,
                Yarn = (await context.YarnOfAsync(design, cancel))?.Details,
            };
        }, cancel);

    /// <summary>Begins a design; its text is version 1. Gives its id.</summary>
    /// <param name="title">1 to <see cref="Design.TitleLength"/> characters.</param>
    /// <param name="text">At most 2 million characters.</param>
    public async Task<Outcome<Guid>> CreateAsync(Caller caller, string title, string text = "", CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(title);
        FieldMessage[] faults = [.. TitleFaults(tidy), .. Refusals.OfText(text)];
        if (faults.Length > 0) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Refusals.NoMember);

        DateTimeOffset now = clock.Now();
        Design design = await context.BeginAsync(caller, tidy, text, now, cancel);
        await context.SaveChangesAsync(cancel);
        return design.Id;
    }

    /// <summary>Gives a design another title.</summary>
    public Task<Outcome> RenameAsync(Caller caller, Guid designId, string title, CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(title);
        FieldMessage[] faults = [.. TitleFaults(tidy)];
        return faults.Length > 0
            ? Task.FromResult(Outcome.Refused(faults))
            : ChangeAsync(context => context.DesignsOf(caller), designId, design => design.Rename(tidy, clock.Now()), cancel);
    }

    /// <summary>Moves a design on (or back): idea, writing, testing, published.</summary>
    public Task<Outcome> MoveToAsync(Caller caller, Guid designId, DesignState state, CancellationToken cancel = default)
    {
        if (!Enum.IsDefined(state)) throw new ArgumentOutOfRangeException(nameof(state));
        return ChangeAsync(context => context.DesignsOf(caller), designId, design => design.MoveTo(state, clock.Now()), cancel);
    }

    /// <summary>Takes a design out of the list. Everything of it is kept; <see cref="RestoreAsync"/> brings it back.</summary>
    public Task<Outcome> DeleteAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        ChangeAsync(context => context.DesignsOf(caller), designId, design => design.Delete(clock.Now()), cancel);

    /// <summary>Brings a deleted design back.</summary>
    public Task<Outcome> RestoreAsync(Caller caller, Guid designId, CancellationToken cancel = default) =>
        ChangeAsync(context => context.AllDesignsOf(caller), designId, design => design.Restore(clock.Now()), cancel);

    /// <summary>Keeps a text as the design's next version and stores what is computed from it, both or neither.</summary>
    /// <param name="text">At most 2 million characters. The same text as the latest version makes no new one.</param>
    /// <param name="basedOnVersion">The version that the writer had before them.</param>
    public async Task<SaveOutcome> SaveAsync(
        Caller caller, Guid designId, string text, int basedOnVersion, CancellationToken cancel = default)
    {
        IReadOnlyList<FieldMessage> faults = Refusals.OfText(text);
        if (faults.Count > 0) return new Refused(faults);
        return await contexts.AttemptAsync(async context =>
        {
            Design? design = await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return new Refused([Refusals.NoDesign]);
            if (design.Text == text) return await AlreadySavedAsync(context, design, cancel);
            if (design.LatestVersion != basedOnVersion) return await ConflictAsync(context, design, text, basedOnVersion, cancel);
            return await SaveAsync(context, design, text, caller, cancel);
        }, cancel);
    }

    /// <summary>Words that are not saved beside the latest version, as a save of them would find it; null where the design is gone.</summary>
    /// <param name="basedOnVersion">The version that the writer had before them.</param>
    public Task<Conflict?> CompareAsync(Caller caller, Guid designId, string text, int basedOnVersion, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
            await context.DesignsOf(caller).FirstOrDefaultAsync(it => it.Id == designId, cancel) is { } design
                ? await ConflictAsync(context, design, text, basedOnVersion, cancel)
                : null, cancel);

    private async Task<SaveOutcome> SaveAsync(
        StudioDbContext context, Design design, string text, Caller caller, CancellationToken cancel)
    {
        DateTimeOffset now = clock.Now();
        context.Versions.Add(design.Save(text, caller.AccountId, now));
        // Computed before the transaction begins: nobody waits for the store meanwhile.
        Results results = await context.ReckonAsync(design, now, cancel);
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        await context.SaveChangesAsync(cancel);
        await context.ThinOutAsync(design, cancel);
        await transaction.CommitAsync(cancel);
        VersionText kept = await context.VersionTextAsync(design.Id, design.LatestVersion, cancel);
        news.Tell(new SavedElsewhere(design.Id, kept.Number, kept.Text, kept.SavedBy, kept.SavedAt));
        return new Saved(design.LatestVersion, now, results);
    }

    private async Task<SaveOutcome> AlreadySavedAsync(StudioDbContext context, Design design, CancellationToken cancel)
    {
        VersionText latest = await context.VersionTextAsync(design.Id, design.LatestVersion, cancel);
        return new Saved(design.LatestVersion, latest.SavedAt, await StoredOrFreshAsync(context, design, cancel));
    }

    private static async Task<Conflict> ConflictAsync(
        StudioDbContext context, Design design, string text, int basedOnVersion, CancellationToken cancel)
    {
        VersionText theirs = await context.VersionTextAsync(design.Id, design.LatestVersion, cancel);
        VersionText? basis = await context.VersionTexts(design.Id, basedOnVersion).FirstOrDefaultAsync(cancel);
        return new Conflict(theirs.Number, theirs.Text, theirs.SavedBy, theirs.SavedAt)
        {
            Together = basis is null ? null : WordsMerge.Together(basis.Text, theirs.Text, text),
        };
    }

    private async Task<Results> StoredOrFreshAsync(StudioDbContext context, Design design, CancellationToken cancel)
    {
        Computation? stored = await context.Computations.FindAsync([design.Id, design.LatestVersion], cancel);
        if (stored?.Whole is { } whole && stored.EngineVersion == DesignResults.EngineVersion && ResultsJson.Unpack(whole) is { } results)
            return results;
        Results fresh = await context.ReckonAsync(design, clock.Now(), cancel);
        await context.SaveChangesAsync(cancel);
        return fresh;
    }

    private Task<Outcome> ChangeAsync(
        Func<StudioDbContext, IQueryable<Design>> among, Guid designId, Action<Design> change, CancellationToken cancel) =>
        contexts.AttemptAsync(async context =>
        {
            Design? design = await among(context).FirstOrDefaultAsync(it => it.Id == designId, cancel);
            if (design is null) return Outcome.Refused(Refusals.NoDesign);
            change(design);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    private static IEnumerable<FieldMessage> TitleFaults(string title) =>
        Wording.NameFaults("title", "design", title, Design.TitleLength);
}
