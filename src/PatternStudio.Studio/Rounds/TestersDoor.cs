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
    /// <summary>The versions that the round has shown, in order; the last is the one that is worked now.</summary>
    public IReadOnlyList<int> Versions { get; init; } = [];

    /// <summary>The version that she began with.</summary>
    public int BeganWith { get; init; }

    /// <summary>The version that she began with and its text, where another is worked now; null otherwise.</summary>
    public VersionBefore? Before { get; init; }

    /// <summary>Whose link it is; null for the link for all.</summary>
    public KeptTester? Tester { get; init; }

    /// <summary>What she sent, the oldest first.</summary>
    public IReadOnlyList<KeptReport> Reports { get; init; } = [];

    public IReadOnlyList<KeptRemark> Remarks { get; init; } = [];
}

/// <summary>An earlier version.</summary>
public sealed record VersionBefore(int Number, string Text);

/// <summary>Opens links. A token that is wrong, taken back, too old, or of a round that has not begun or is over or a design that was deleted is one and the same: nothing.</summary>
public sealed class TestersDoor(IDbContextFactory<StudioDbContext> contexts, VersionTexts texts, Openings openings, TimeProvider clock)
{
    /// <summary>
    /// Made ready once: finding again what the store is to be asked takes longer than the asking. Not static, since it belongs to this program's store.
    /// </summary>
    private readonly Func<StudioDbContext, byte[], DateTimeOffset, CancellationToken, Task<Door?>> look = EF.CompileAsyncQuery(
        (StudioDbContext context, byte[] hash, DateTimeOffset now, CancellationToken cancel) => (
            from link in context.Links.AsNoTracking()
            where link.TokenHash == hash && link.Revoked == null && link.Expires > now
            join round in context.Rounds.AsNoTracking() on link.RoundId equals round.Id
            join design in context.Designs on round.DesignId equals design.Id
            join studio in context.Studios on design.StudioId equals studio.Id
            join invited in context.Testers.AsNoTracking() on link.TesterId equals (Guid?)invited.Id into testers
            from tester in testers.DefaultIfEmpty()
            where round.Ended == null && design.Deleted == null
            select new Door(
                link, round, design.Title, design.StudioId, studio.Name, tester, context.Reports.Any(report => report.TesterId == link.TesterId))).FirstOrDefault());

    private readonly Func<StudioDbContext, Guid, IAsyncEnumerable<TesterReport>> reportsOf = EF.CompileAsyncQuery((StudioDbContext context, Guid tester) =>
        context.Reports.AsNoTracking().Where(it => it.TesterId == tester).OrderBy(it => it.Sent).ThenBy(it => it.Id).AsQueryable());

    private readonly Func<StudioDbContext, Guid, IAsyncEnumerable<Remark>> remarksOf = EF.CompileAsyncQuery((StudioDbContext context, Guid tester) => (
        from remark in context.Remarks.AsNoTracking()
        join report in context.Reports on remark.ReportId equals report.Id
        where report.TesterId == tester
        orderby remark.Sent, remark.Id
        select remark).AsQueryable());

    /// <summary>What a token opens; null for nothing. Every refusal costs the same: one hash, one look into the store.</summary>
    /// <param name="began">The version that she says she began with, or that her device remembers; null for what is known of her link. One that the round never showed counts for nothing.</param>
    /// <param name="withReports">False where what she sent is not asked for.</param>
    public async Task<OpenLink?> OpenAsync(string token, int? began = null, bool withReports = true, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(token);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (await FindAsync(context, token, clock.Now(), cancel) is not { } door) return null;
        TestRound round = door.Round;
        var open = new OpenLink(door.Link.Id, round.Id, round.DesignId, door.Title, door.Studio, await texts.OfAsync(context, round.DesignId, round.Version, cancel), round.Plan)
        {
            Versions = round.Shown,
            Tester = door.Tester is { } tester ? new KeptTester(tester.Id, tester.Name, tester.Size, tester.Added) : null,
        };
        if (door is { HasReports: true, Tester: { } sender } && (withReports || door.Link.BeganWith is null)) open = await WithReportsAsync(context, open, sender, cancel);
        int first = began is { } told && open.Versions.Contains(told) ? told : BeganWith(door.Link, open);
        return open with
        {
            BeganWith = first,
            Before = first == round.Version ? null : new VersionBefore(first, await texts.OfAsync(context, round.DesignId, first, cancel)),
        };
    }

    /// <summary>A tester's own link remembers its first opening; where it was opened before that was kept, her first report tells.</summary>
    private int BeganWith(ShareLink link, OpenLink open)
    {
        if ((link.BeganWith ?? openings.Of(link.Id)) is { } known && open.Versions.Contains(known)) return known;
        if (open.Tester is null) return open.Plan.Version;
        int first = open.Reports.Count > 0 && open.Versions.Contains(open.Reports[0].Version) ? open.Reports[0].Version : open.Plan.Version;
        openings.Note(link.Id, first);
        return first;
    }

    /// <summary>All that a link leads to and that may change, in one look.</summary>
    internal async Task<Door?> FindAsync(StudioDbContext context, string token, DateTimeOffset now, CancellationToken cancel)
    {
        Door? found = await look(context, LinkToken.Hash(token), now, cancel);
        return found is not null && TestRounds.IsOpen(found.Round, now) && TestRounds.HasBegun(found.Round, now) ? found : null;
    }

    internal sealed record Door(ShareLink Link, TestRound Round, string Title, Guid StudioId, string Studio, Tester? Tester, bool HasReports);

    private async Task<OpenLink> WithReportsAsync(StudioDbContext context, OpenLink open, Tester tester, CancellationToken cancel)
    {
        List<TesterReport> reports = await reportsOf(context, tester.Id).ToListAsync(cancel);
        List<Remark> remarks = await remarksOf(context, tester.Id).ToListAsync(cancel);
        // A report that came between the two looks waits for the next opening.
        return open with
        {
            Reports = [.. reports.Select(report => TestRounds.Kept(report, tester.Name))],
            Remarks = [.. from remark in remarks join report in reports on remark.ReportId equals report.Id select TestRounds.Kept(remark, tester.Name, report.Version)],
        };
    }
}
