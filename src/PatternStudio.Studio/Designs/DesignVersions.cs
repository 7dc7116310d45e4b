using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Designs;

/// <summary>Looks into the versions of a design.</summary>
public sealed class DesignVersions(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>All versions of a design without their texts, the newest first; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyList<VersionSummary>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await (
            from version in context.Versions
            where version.DesignId == designId && context.DesignsOf(caller).Any(it => it.Id == designId)
            join computed in context.Computations
                on new { version.DesignId, Version = version.Number } equals new { computed.DesignId, computed.Version }
            join known in context.People() on version.SavedBy equals known.Id into people
            from person in people.DefaultIfEmpty()
            orderby version.Number descending
            select new VersionSummary(
                version.Number, version.SavedAt, person.Name ?? "",
                computed.Rows, computed.RowsChecked, computed.Errors, computed.Warnings) { Name = version.Name }).ToListAsync(cancel);
    }

    /// <summary>One version with its text; null where the studio has none such.</summary>
    public async Task<VersionText?> FindAsync(Caller caller, Guid designId, int number, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        return await context.DesignsOf(caller).AnyAsync(it => it.Id == designId, cancel)
            ? await context.VersionTexts(designId, number).FirstOrDefaultAsync(cancel)
            : null;
    }

    /// <summary>Gives a version a name to be found by ('sent to the testers'), another one, or (empty) none. Its words stay as they are.</summary>
    /// <param name="name">At most <see cref="DesignVersion.NameLength"/> characters.</param>
    public Task<Outcome> NameAsync(Caller caller, Guid designId, int number, string name, CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(name);
        FieldMessage[] faults = tidy.Length == 0 ? [] : [.. Wording.NameFaults("name", "version", tidy, DesignVersion.NameLength)];
        if (faults.Length > 0) return Task.FromResult(Outcome.Refused(faults));
        return contexts.AttemptAsync(async context =>
        {
            DesignVersion? version = await context.DesignsOf(caller).AnyAsync(it => it.Id == designId, cancel)
                ? await context.Versions.FindAsync([designId, number], cancel)
                : null;
            if (version is null) return Outcome.Refused(Refusals.NoDesign);
            version.Call(tidy);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }
}

internal static class VersionQueries
{
    public static Task<VersionText> VersionTextAsync(
        this StudioDbContext context, Guid designId, int number, CancellationToken cancel) =>
        context.VersionTexts(designId, number).FirstAsync(cancel);

    public static IQueryable<VersionText> VersionTexts(this StudioDbContext context, Guid designId, int number) =>
        from version in context.Versions
        where version.DesignId == designId && version.Number == number
        join known in context.People() on version.SavedBy equals known.Id into people
        from person in people.DefaultIfEmpty()
        select new VersionText(version.Number, version.SavedAt, person.Name ?? "", version.Text);
}
