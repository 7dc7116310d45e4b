using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Keeps what a member has typed and not saved, so that a laptop closed in mid-sentence loses nothing.</summary>
public sealed class Drafts(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>Drafts that nobody has come back to for so long are dropped when another is kept.</summary>
    public static readonly TimeSpan KeptFor = TimeSpan.FromDays(90);

    /// <summary>The caller's own drafts of a design, the newest first; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyList<DraftWords>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.DraftsOf(caller, designId)
            .Where(_ => context.DesignsOf(caller).Any(design => design.Id == designId))
            .OrderByDescending(draft => draft.At)
            .Select(draft => new DraftWords(draft.Writer, draft.Text, draft.BasedOn, draft.At, draft.Place))
            .ToListAsync(cancel);
    }

    /// <summary>Keeps words in place of those that the same writer kept before. Their time is now.</summary>
    /// <param name="over">The draft that the words grew out of: dropped, unless its writer has gone on since.</param>
    /// <remarks>Refused where the text can't be kept at all, as a save would be.</remarks>
    public async Task<Outcome> KeepAsync(
        Caller caller, Guid designId, DraftWords words, DraftWords? over = null, CancellationToken cancel = default)
    {
        IReadOnlyList<FieldMessage> faults = Refusals.OfText(words.Text);
        if (faults.Count > 0) return Outcome.Refused(faults);
        DateTimeOffset now = clock.Now();
        return await contexts.AttemptAsync(async context =>
        {
            if (!await context.DesignsOf(caller).AnyAsync(design => design.Id == designId, cancel)) return Outcome.Refused(Refusals.NoDesign);
            Draft? kept = await context.Drafts.FindAsync([designId, caller.AccountId, words.Writer], cancel);
            if (kept is null) context.Drafts.Add(new Draft(designId, caller.AccountId, words with { At = now }));
            else kept.Take(words with { At = now });
            await context.SaveChangesAsync(cancel);
            await context.DropAsync(caller, designId, over, cancel);
            DateTimeOffset tooOld = now - KeptFor;
            await context.Drafts.Where(draft => draft.At < tooOld).ExecuteDeleteAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Drops a writer's words, since they are saved or given up; and those that they grew out of, unless their writer has gone on.</summary>
    public async Task ForgetAsync(Caller caller, Guid designId, Guid writer, DraftWords? over = null, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        await context.DraftsOf(caller, designId).Where(draft => draft.Writer == writer).ExecuteDeleteAsync(cancel);
        await context.DropAsync(caller, designId, over, cancel);
    }
}

internal static class DraftQueries
{
    public static IQueryable<Draft> DraftsOf(this StudioDbContext context, Caller caller, Guid designId) =>
        context.Drafts.Where(draft => draft.DesignId == designId && draft.AccountId == caller.AccountId);

    public static async Task DropAsync(this StudioDbContext context, Caller caller, Guid designId, DraftWords? over, CancellationToken cancel)
    {
        if (over is null) return;
        await context.DraftsOf(caller, designId).Where(draft => draft.Writer == over.Writer && draft.At == over.At).ExecuteDeleteAsync(cancel);
    }
}
