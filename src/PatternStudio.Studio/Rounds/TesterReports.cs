using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Rounds;

/// <summary>A report on its way to the designer.</summary>
/// <param name="Name">Who sends it; asked only where the link is for all.</param>
/// <param name="Details">What was measured.</param>
/// <param name="Remarks">What she says at rows.</param>
public sealed record SentReport(string Name, ReportDetails Details, IReadOnlyList<SentRemark> Remarks)
{
    /// <summary>Most remarks sent at once; more can be added later.</summary>
    public const int MostRemarks = 20;

    /// <summary>A photo of the piece; null for none.</summary>
    public PreparedPhoto? Photo { get; init; }

    /// <summary>The report that this adds to; null for a new one.</summary>
    public Guid? AddsTo { get; init; }

    /// <summary>The version that she worked from; null for the one that she began with.</summary>
    public int? Version { get; init; }
}

/// <summary>A remark on its way, with its photo.</summary>
public sealed record SentRemark(RemarkDetails Details, PreparedPhoto? Photo);

/// <summary>A report that has arrived.</summary>
/// <param name="OwnToken">The token of the tester's own link where she came by the link for all; null where she has it already.</param>
public sealed record ArrivedReport(Guid Id, string? OwnToken);

/// <summary>Takes reports from testers. A report can be added to until the round ends.</summary>
public sealed class TesterReports(IDbContextFactory<StudioDbContext> contexts, TestersDoor door, VersionTexts texts, WritersTurn turn, TimeProvider clock)
{
    /// <summary>Keeps a report with its remarks and photos, all or nothing.</summary>
    /// <returns>Messages name fields of <see cref="ReportDetails"/>, 'name', or 'Remarks[2].Text' for the remark with index 2.</returns>
    public async Task<Outcome<ArrivedReport>> SendAsync(string token, SentReport sent, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(token);
        ArgumentNullException.ThrowIfNull(sent);
        SentReport tidy = Tidy(sent);
        if (Faults(tidy) is { Length: > 0 } faults) return Outcome.Refused(faults);
        return await contexts.AttemptAsync(context => SendAsync(context, token, tidy, cancel), cancel);
    }

    private async Task<Outcome<ArrivedReport>> SendAsync(StudioDbContext context, string token, SentReport sent, CancellationToken cancel)
    {
        DateTimeOffset now = clock.Now();
        if (await door.FindAsync(context, token, now, cancel) is not { Link: var link, Round: var round } found) return Outcome.Refused(RoundRefusals.Closed);
        if (link.TesterId is null && Wording.NameFaults("name", "tester", sent.Name, Tester.NameLength).ToArray() is { Length: > 0 } nameless)
            return Outcome.Refused([new("name", sent.Name.Length == 0 ? "Tell the designer your name, or any name that she may call you by." : nameless[0].Message)]);
        Tester tester = found.Tester ?? new Tester(Guid.CreateVersion7(now), round.Id, sent.Name, null, now);
        TesterReport? report = sent.AddsTo is { } old ? await context.Reports.FirstOrDefaultAsync(it => it.Id == old && it.TesterId == tester.Id, cancel) : null;
        int version = report?.Version ?? WorkedFrom(sent.Version, link, round);
        IReadOnlyList<string> sizes = await texts.SizesAsync(context, round.DesignId, version, cancel);
        if (sent.Details.Size < 0 || sent.Details.Size >= sizes.Count) return Outcome.Refused(RoundRefusals.NoSize(version, sizes));
        using IDisposable mine = await turn.WaitAsync(cancel);
        context.Database.AutoSavepointsEnabled = false; // all or nothing: there is nothing to go back to but the beginning
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        if (report is null && !await CountAsync(context, link, cancel)) return Outcome.Refused(RoundRefusals.AllSent);
        if (link.TesterId is null) context.Testers.Add(tester);
        report = report is null ? Add(context, tester, version, sent, now) : Change(report, sent, now);
        if (Keep(context, found.StudioId, sent.Photo, now) is { } photo) report.Show(photo);
        foreach (SentRemark remark in sent.Remarks)
            context.Remarks.Add(new Remark(Guid.CreateVersion7(now), report.Id, remark.Details, Keep(context, found.StudioId, remark.Photo, now), now));
        MadeLink? own = link.TesterId is null ? ShareLinks.MakeOwn(context, round, tester, version, now) : null;
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return new ArrivedReport(report.Id, own?.Token);
    }

    /// <summary>Takes one of the link's reports: the store counts, so that of two at once none slips through the last place.</summary>
    private static async Task<bool> CountAsync(StudioDbContext context, ShareLink link, CancellationToken cancel) =>
        await context.Links.Where(it => it.Id == link.Id && it.Reports < it.MostReports)
            .ExecuteUpdateAsync(set => set.SetProperty(it => it.Reports, it => it.Reports + 1), cancel) == 1;

    /// <summary>What she says, if the round ever showed it; else what her link showed first; else what is worked now.</summary>
    private static int WorkedFrom(int? told, ShareLink link, TestRound round) =>
        told is { } said && round.Shown.Contains(said) ? said : link.BeganWith is { } first && round.Shown.Contains(first) ? first : round.Version;

    private static TesterReport Add(StudioDbContext context, Tester tester, int version, SentReport sent, DateTimeOffset now)
    {
        var report = new TesterReport(Guid.CreateVersion7(now), tester.RoundId, tester.Id, version, sent.Details, now);
        context.Reports.Add(report);
        return report;
    }

    private static TesterReport Change(TesterReport report, SentReport sent, DateTimeOffset now)
    {
        report.Change(sent.Details, now);
        return report;
    }

    private static Guid? Keep(StudioDbContext context, Guid studio, PreparedPhoto? photo, DateTimeOffset now)
    {
        if (photo is null) return null;
        var kept = new Photo(Guid.CreateVersion7(now), studio, photo, now);
        context.Photos.Add(kept);
        return kept.Id;
    }

    private static FieldMessage[] Faults(SentReport sent) =>
    [
        .. sent.Details.IsEmpty && sent.Remarks.Count == 0 && sent.Photo is null && sent.AddsTo is null ? [RoundRefusals.NothingReported] : Array.Empty<FieldMessage>(),
        .. sent.Remarks.Count > SentReport.MostRemarks ? [new("", $"At most {SentReport.MostRemarks} remarks can be sent at once. Send these, then add the rest.")] : Array.Empty<FieldMessage>(),
        .. RoundRefusals.OfReport(sent.Details),
        .. sent.Remarks.SelectMany((remark, at) => RoundRefusals.OfRemark(remark.Details).Select(fault => fault with { Field = $"Remarks[{at}].{fault.Field}" })),
    ];

    private static SentReport Tidy(SentReport sent) => sent with
    {
        Name = Wording.Tidy(sent.Name),
        Details = sent.Details with { Yarn = Wording.Tidy(sent.Details.Yarn), Words = Wording.Tidy(sent.Details.Words) },
        Remarks = [.. sent.Remarks.Select(remark => remark with
        {
            Details = new(Wording.Tidy(remark.Details.Row), Wording.Tidy(remark.Details.Word), Wording.Tidy(remark.Details.Text)),
        })],
    };
}
