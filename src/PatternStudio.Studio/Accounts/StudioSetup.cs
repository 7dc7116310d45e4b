using System.Data;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Sample;

namespace PatternStudio.Studio.Accounts;

/// <summary>The first step: a studio, its first account, and the sample designs if wanted.</summary>
/// <remarks>
/// Only the first setup is open to everybody, unless the setting 'Studio:OpenToAll' is true: then whoever comes may
/// open a studio of their own on the same server.
/// </remarks>
public sealed class StudioSetup(
    IDbContextFactory<StudioDbContext> contexts, IServiceScopeFactory scopes, IConfiguration configuration, TimeProvider clock)
{
    /// <summary>True while there is no account yet.</summary>
    public async Task<bool> IsNeededAsync(CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return !await context.Users.AnyAsync(cancel);
    }

    /// <summary>Creates the studio and its first account, all or nothing.</summary>
    /// <param name="studioName">1 to <see cref="Studio.NameLength"/> characters; may be left empty with the sample, which brings a name.</param>
    /// <param name="email">The address to sign in with.</param>
    /// <param name="password">10 to 200 characters, 4 of them different.</param>
    /// <param name="loadSample">True to put the sample designs and yarns into the studio.</param>
    /// <returns>The caller; or messages for <c>studioName</c>, <c>email</c>, <c>password</c>, or for the whole.</returns>
    public async Task<Outcome<Caller>> CreateAsync(
        string studioName, string email, string password, bool loadSample, CancellationToken cancel = default)
    {
        string name = Wording.Tidy(studioName);
        if (loadSample && name.Length == 0) name = SampleStudio.Name;
        var form = new SetupForm(name, Wording.Tidy(email), password ?? "");
        if (form.Faults() is { Count: > 0 } faults) return Outcome.Refused(faults);

        return await Attempts.UntilSettledAsync(() => CreateAsync(form, loadSample, cancel));
    }

    private async Task<Outcome<Caller>> CreateAsync(SetupForm form, bool loadSample, CancellationToken cancel)
    {
        await using AsyncServiceScope scope = scopes.CreateAsyncScope();
        StudioDbContext context = scope.ServiceProvider.GetRequiredService<StudioDbContext>();
        // Serializable: of two first setups at the same moment, one is refused.
        await using var transaction = await context.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancel);
        if (!configuration.GetValue<bool>("Studio:OpenToAll") && await context.Users.AnyAsync(cancel))
            return Outcome.Refused("", "This studio is already set up. Sign in instead.");
        var accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        Outcome<Caller> opened = await OpenAsync(context, accounts, form, loadSample, cancel);
        if (opened.Succeeded) await transaction.CommitAsync(cancel);
        return opened;
    }

    private async Task<Outcome<Caller>> OpenAsync(
        StudioDbContext context, UserManager<Account> accounts, SetupForm form, bool loadSample, CancellationToken cancel)
    {
        DateTimeOffset now = clock.Now();
        var account = new Account { Id = Guid.CreateVersion7(now), UserName = form.Email, Email = form.Email };
        IdentityResult created = await accounts.CreateAsync(account, form.Password);
        if (!created.Succeeded) return Outcome.Refused(SetupForm.FaultsOf(created));

        var studio = new Studio(Guid.CreateVersion7(now), form.StudioName, now);
        context.Studios.Add(studio);
        context.Memberships.Add(new Membership(account.Id, studio.Id, now));
        await context.SaveChangesAsync(cancel);
        var caller = new Caller(account.Id, studio.Id);
        if (loadSample) await SampleStudio.LoadAsync(context, caller, now, cancel);
        return caller;
    }
}
