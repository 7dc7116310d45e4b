using Microsoft.EntityFrameworkCore;
using PatternStudio.Craft.Reading;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Rounds;

/// <summary>The designer's side of test rounds: makes them, changes them, reads them.</summary>
public sealed class TestRounds(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>The rounds of a design, the newest first; empty where the studio has no such design.</summary>
    public async Task<IReadOnlyList<RoundSummary>> ListAsync(Caller caller, Guid designId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        DateTimeOffset now = clock.Now();
        var rounds = await context.RoundsOf(caller).AsNoTracking().Where(round => round.DesignId == designId)
            .OrderByDescending(round => round.Created).ThenByDescending(round => round.Id)
            .Select(round => new
            {
                Round = round,
                Joined = context.Testers.Count(tester => tester.RoundId == round.Id),
                Reports = context.Reports.Count(report => report.RoundId == round.Id),
                Unanswered = context.Remarks.Count(remark => remark.Answered == AnswerKind.None && context.Reports.Any(report => report.Id == remark.ReportId && report.RoundId == round.Id)),
            }).ToListAsync(cancel);
        return [.. rounds.Select(it => new RoundSummary(
            it.Round.Id, it.Round.Version, it.Round.Opens, it.Round.Ends, IsOpen(it.Round, now), it.Joined, it.Reports, it.Unanswered))];
    }

    /// <summary>Makes a round. Gives its id.</summary>
    public async Task<Outcome<Guid>> BeginAsync(Caller caller, Guid designId, RoundPlan plan, CancellationToken cancel = default)
    {
        RoundPlan tidy = Tidy(plan);
        if (RoundRefusals.OfPlan(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        if (!await context.DesignsOf(caller).AnyAsync(it => it.Id == designId, cancel)) return Outcome.Refused(Refusals.NoDesign);
        if (await VersionFaultAsync(context, designId, tidy, cancel) is { } fault) return Outcome.Refused(fault);
        DateTimeOffset now = clock.Now();
        var round = new TestRound(Guid.CreateVersion7(now), designId, tidy, now);
        context.Rounds.Add(round);
        await context.SaveChangesAsync(cancel);
        return round.Id;
    }

    /// <summary>Changes a round; another version is shown to testers from then on, with what changed row by row. Links go with its last day.</summary>
    public Task<Outcome> ChangeAsync(Caller caller, Guid roundId, RoundPlan plan, CancellationToken cancel = default)
    {
        RoundPlan tidy = Tidy(plan);
        if (RoundRefusals.OfPlan(tidy) is { Length: > 0 } faults) return Task.FromResult(Outcome.Refused(faults));
        return contexts.AttemptAsync(async context =>
        {
            TestRound? round = await context.RoundsOf(caller).FirstOrDefaultAsync(it => it.Id == roundId, cancel);
            if (round is null) return Outcome.Refused(RoundRefusals.NoRound);
            if (await VersionFaultAsync(context, round.DesignId, tidy, cancel) is { } fault) return Outcome.Refused(fault);
            round.Change(tidy);
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);
    }

    /// <summary>Ends a round at once: no link of it opens any more. What was reported stays.</summary>
    public Task<Outcome> EndAsync(Caller caller, Guid roundId, CancellationToken cancel = default) =>
        contexts.AttemptAsync(async context =>
        {
            TestRound? round = await context.RoundsOf(caller).FirstOrDefaultAsync(it => it.Id == roundId, cancel);
            if (round is null) return Outcome.Refused(RoundRefusals.NoRound);
            round.End(clock.Now());
            await context.SaveChangesAsync(cancel);
            return Outcome.Done;
        }, cancel);

    /// <summary>A round with its links, testers, reports and remarks; null where the studio has none such.</summary>
    public async Task<RoundBook?> OpenAsync(Caller caller, Guid roundId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        TestRound? round = await context.RoundsOf(caller).AsNoTracking().FirstOrDefaultAsync(it => it.Id == roundId, cancel);
        if (round is null) return null;
        string title = await context.Designs.Where(design => design.Id == round.DesignId).Select(design => design.Title).FirstAsync(cancel);
        List<Tester> testers = await context.Testers.AsNoTracking().Where(it => it.RoundId == roundId).OrderBy(it => it.Added).ThenBy(it => it.Id).ToListAsync(cancel);
        List<ShareLink> links = await context.Links.AsNoTracking().Where(it => it.RoundId == roundId).OrderBy(it => it.Created).ThenBy(it => it.Id).ToListAsync(cancel);
        List<TesterReport> reports = await context.Reports.AsNoTracking().Where(it => it.RoundId == roundId).OrderBy(it => it.Sent).ThenBy(it => it.Id).ToListAsync(cancel);
        List<Remark> remarks = await context.Remarks.AsNoTracking()
            .Where(it => context.Reports.Any(report => report.Id == it.ReportId && report.RoundId == roundId)).OrderBy(it => it.Sent).ThenBy(it => it.Id).ToListAsync(cancel);
        var names = testers.ToDictionary(tester => tester.Id, tester => tester.Name);
        var byId = reports.ToDictionary(report => report.Id);
        return new RoundBook(
            round.Id, round.DesignId, title, round.Plan, IsOpen(round, clock.Now()),
            [.. links.Select(link => new KeptLink(
                link.Id, link.TesterId is { } tester ? names[tester] : "", link.Created, link.LastDay, link.Expires <= clock.Now(), link.Revoked is not null, link.Reports, link.MostReports))],
            [.. testers.Select(tester => new KeptTester(tester.Id, tester.Name, tester.Size, tester.Added))],
            [.. reports.Select(report => Kept(report, names[report.TesterId]))],
            [.. remarks.Select(remark => Kept(remark, names[byId[remark.ReportId].TesterId], byId[remark.ReportId].Version))]) { Begun = HasBegun(round, clock.Now()) };
    }

    internal static KeptReport Kept(TesterReport report, string name) =>
        new(report.Id, report.TesterId, name, report.Version, report.Details, report.Sent, report.Changed) { PhotoId = report.PhotoId };

    internal static KeptRemark Kept(Remark remark, string name, int version) => new(
        remark.Id, remark.ReportId, name, version, new RemarkDetails(remark.Row, remark.Word, remark.Text), remark.PhotoId, remark.Sent,
        new RemarkAnswer(remark.Answered, remark.MendedIn, remark.Answer));

    internal static bool HasBegun(TestRound round, DateTimeOffset now) => now >= RoundPlan.StartOf(round.Opens);

    /// <summary>True until it is over; its links open once it has begun.</summary>
    internal static bool IsOpen(TestRound round, DateTimeOffset now) => round.Ended is null && now < RoundPlan.EndOf(round.Ends);

    private static RoundPlan Tidy(RoundPlan plan) => plan with { Note = Wording.Tidy(plan.Note) };

    /// <summary>A round tests a version as it was saved, and sizes that it has.</summary>
    private static async Task<FieldMessage?> VersionFaultAsync(StudioDbContext context, Guid designId, RoundPlan plan, CancellationToken cancel)
    {
        string? text = await context.Versions.Where(version => version.DesignId == designId && version.Number == plan.Version)
            .Select(version => version.Text).FirstOrDefaultAsync(cancel);
        if (text is null) return RoundRefusals.NoVersion;
        int sizes = PatternReader.Read(text).Sizes.Count;
        return plan.Sizes.All(size => size >= 0 && size < sizes) ? null : new(nameof(plan.Sizes), "The version has not all of these sizes. Choose among those it has.");
    }
}
