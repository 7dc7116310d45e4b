using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Accounts;

/// <summary>What the people of a studio are called.</summary>
public sealed class People(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>The name that the caller gave herself; empty where she is called by her e-mail address.</summary>
    public async Task<string> NameOfAsync(Caller caller, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.Users.Where(account => account.Id == caller.AccountId).Select(account => account.Name).FirstOrDefaultAsync(cancel) ?? "";
    }

    /// <summary>Takes another name for the caller, everywhere and also for what she did before.</summary>
    /// <param name="name">At most <see cref="Account.NameLength"/> characters; empty to be called by the e-mail address again.</param>
    public Task<Outcome> CallAsync(Caller caller, string name, CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(name);
        FieldMessage[] faults = [.. Wording.ShortFaults(nameof(name), "Your name", tidy, Account.NameLength)];
        if (faults.Length > 0) return Task.FromResult(Outcome.Refused(faults));
        return contexts.AttemptAsync(async context =>
        {
            if (!await context.IsMemberAsync(caller, cancel)) return Outcome.Refused(Designs.Refusals.NoMember);
            Account account = await context.Users.FirstAsync(it => it.Id == caller.AccountId, cancel);
            account.Name = tidy;
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }
}

/// <summary>Somebody as others call her.</summary>
internal sealed class Person
{
    public Guid Id { get; init; }

    /// <summary>The name that she gave herself, else her e-mail address; null in a join that finds nobody.</summary>
    public string? Name { get; init; }
}

internal static class PeopleQueries
{
    public static IQueryable<Person> People(this StudioDbContext context) =>
        context.Users.Select(account => new Person { Id = account.Id, Name = account.Name != "" ? account.Name : account.Email });
}
