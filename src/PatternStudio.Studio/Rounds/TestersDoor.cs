using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>What an open link shows.</summary>
/// <param name="LinkId">The link.</param>
/// <param name="RoundId">The round.</param>
/// <param name="DesignId">The design.</param>
/// <param name="Title">The design's title.</param>
/// <param name="Studio">The name of the designer's studio.</param>
/// <param name="Text">The version that is worked, as it was saved.</param>
/// <param name="Plan">What the round asks.</param>
public sealed record OpenLink(Guid LinkId, Guid RoundId, Guid DesignId, string Title, string Studio, string Text, RoundPlan Plan)
{
    /// <summary>The version that was worked before, and its text; null while the first is.</summary>
    public VersionBefore? Before { get; init; }

    /// <summary>Whose link it is; null for the link for all.</summary>
    public KeptTester? Tester { get; init; }

    /// <summary>What she sent, the oldest first.</summary>
    public IReadOnlyList<KeptReport> Reports { get; init; } = [];

    public IReadOnlyList<KeptRemark> Remarks { get; init; } = [];
}

/// <summary>An earlier version.</summary>
public sealed record VersionBefore(int Number, string Text);

/// <summary>Opens links. A token that is wrong, taken back, too old, or of a round that is over or a design that was deleted is one and the same: nothing.</summary>
public sealed class TestersDoor(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>What a token opens; null for nothing. Every refusal costs the same: one hash, one look into the store.</summary>
    public async Task<OpenLink?> OpenAsync(string token, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(token);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (await context.OpenLinkAsync(token, clock.Now(), cancel) is not (var link, var round)) return null;
        var shown = await (
            from design in context.Designs
            where design.Id == round.DesignId
            join studio in context.Studios on design.StudioId equals studio.Id
            join version in context.Versions on new { DesignId = design.Id, Number = round.Version } equals new { version.DesignId, version.Number }
            select new { design.Title, Studio = studio.Name, version.Text }).FirstAsync(cancel);
        var open = new OpenLink(link.Id, round.Id, round.DesignId, shown.Title, shown.Studio, shown.Text, round.Plan)
        {
            Before = round.VersionBefore is { } before
                ? new VersionBefore(before, await context.Versions.Where(it => it.DesignId == round.DesignId && it.Number == before).Select(it => it.Text).FirstAsync(cancel))
                : null,
        };
        return link.TesterId is { } tester ? await WithReportsAsync(context, open, tester, cancel) : open;
    }

    private static async Task<OpenLink> WithReportsAsync(StudioDbContext context, OpenLink open, Guid testerId, CancellationToken cancel)
    {
        Tester tester = await context.Testers.AsNoTracking().FirstAsync(it => it.Id == testerId, cancel);
        List<TesterReport> reports = await context.Reports.AsNoTracking().Where(it => it.TesterId == testerId).OrderBy(it => it.Sent).ThenBy(it => it.Id).ToListAsync(cancel);
        List<Remark> remarks = reports.Count == 0 ? [] : await context.Remarks.AsNoTracking()
            .Where(it => context.Reports.Any(report => report.Id == it.ReportId && report.TesterId == testerId)).OrderBy(it => it.Sent).ThenBy(it => it.Id).ToListAsync(cancel);
        return open with
        {
            Tester = new KeptTester(tester.Id, tester.Name, tester.Size, tester.Added),
            Reports = [.. reports.Select(report => TestRounds.Kept(report, tester.Name))],
            Remarks = [.. remarks.Select(remark => TestRounds.Kept(remark, tester.Name, reports.Find(report => report.Id == remark.ReportId)!.Version))],
        };
    }
}

internal static class OpenLinks
{
    /// <summary>The link of a token and its round while both are open; null otherwise.</summary>
    public static async Task<(ShareLink Link, TestRound Round)?> OpenLinkAsync(this StudioDbContext context, string token, DateTimeOffset now, CancellationToken cancel)
    {
        byte[] hash = LinkToken.Hash(token);
        var found = await (
            from link in context.Links
            where link.TokenHash == hash
            join round in context.Rounds on link.RoundId equals round.Id
            where link.Revoked == null && link.Expires > now && round.Ended == null
                && context.Designs.Any(design => design.Id == round.DesignId && design.Deleted == null)
            select new { link, round }).FirstOrDefaultAsync(cancel);
        return found is not null && TestRounds.IsOpen(found.round, now) ? (found.link, found.round) : null;
    }
}
