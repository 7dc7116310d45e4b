using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Accounts;

/// <summary>Finds the studio in which an account works.</summary>
public sealed class Memberships(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>The caller for a signed-in account, in the studio that it joined first.</summary>
    /// <returns>Null where the account is a member of none.</returns>
    public async Task<Caller?> CallerAsync(Guid accountId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        Membership? first = await context.Memberships
            .Where(membership => membership.AccountId == accountId)
            .OrderBy(membership => membership.Since).ThenBy(membership => membership.StudioId)
            .FirstOrDefaultAsync(cancel);
        return first is null ? null : new Caller(accountId, first.StudioId);
    }

    /// <summary>The name of the caller's studio; null where the caller is no member of it.</summary>
    public async Task<string?> StudioNameAsync(Caller caller, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.Studios
            .Where(studio => studio.Id == caller.StudioId && context.Memberships.Any(
                membership => membership.StudioId == studio.Id && membership.AccountId == caller.AccountId))
            .Select(studio => studio.Name)
            .FirstOrDefaultAsync(cancel);
    }
}
