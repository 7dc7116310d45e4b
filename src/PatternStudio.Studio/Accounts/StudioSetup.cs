using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Accounts;

/// <summary>The first step: a studio, its first account, and the sample designs if wanted.</summary>
public sealed class StudioSetup(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>True while there is no account yet.</summary>
    public async Task<bool> IsNeededAsync(CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return !await context.Users.AnyAsync(cancel);
    }

    /// <summary>Creates the studio and its first account.</summary>
    /// <param name="studioName">1 to <see cref="Studio.NameLength"/> characters.</param>
    /// <param name="email">The address to sign in with.</param>
    /// <param name="password">At least 10 characters.</param>
    /// <param name="loadSample">True to put the sample designs and yarns into the studio.</param>
    /// <returns>The caller; or messages for <c>studioName</c>, <c>email</c>, <c>password</c>.</returns>
    public Task<Outcome<Caller>> CreateAsync(
        string studioName, string email, string password, bool loadSample, CancellationToken cancel = default) =>
        throw new NotSupportedException();
}
