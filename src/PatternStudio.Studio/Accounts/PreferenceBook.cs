using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Accounts;

/// <summary>Everybody's preferences. They belong to the account, so that they are there on the phone as well.</summary>
public sealed class PreferenceBook(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>The account's preferences; the usual ones where it never chose any.</summary>
    public async Task<Preferences> OfAsync(Guid accountId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        KeptPreferences? kept = await context.Preferences.AsNoTracking().FirstOrDefaultAsync(it => it.AccountId == accountId, cancel);
        return kept?.Value ?? new Preferences();
    }

    /// <summary>Keeps the caller's preferences. Of two saves at once the later stays.</summary>
    public Task<Outcome> KeepAsync(Caller caller, Preferences wanted, CancellationToken cancel = default) => ChangeAsync(caller, _ => wanted, cancel);

    /// <summary>Changes something of the caller's preferences and leaves the rest as it is in the store by then.</summary>
    public Task<Outcome> ChangeAsync(Caller caller, Func<Preferences, Preferences> change, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Designs.Refusals.NoMember);
            KeptPreferences? kept = await context.Preferences.FirstOrDefaultAsync(it => it.AccountId == caller.AccountId, cancel);
            if (kept is null) context.Preferences.Add(kept = new KeptPreferences(caller.AccountId));
            kept.Take(change(kept.Value));
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
}
