using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>The designer's answers to remarks; testers read them on their page.</summary>
public sealed class RemarkAnswers(IDbContextFactory<StudioDbContext> contexts)
{
    /// <summary>Answers one remark or several alike, all or none.</summary>
    public async Task<Outcome> AnswerAsync(Caller caller, IReadOnlyList<Guid> remarkIds, RemarkAnswer answer, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(remarkIds);
        RemarkAnswer tidy = answer with { Words = Wording.Tidy(answer.Words) };
        FieldMessage[] faults = [.. Faults(tidy)];
        if (faults.Length > 0) return Outcome.Refused(faults);
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        List<Remark> remarks = await context.Remarks.Where(remark => remarkIds.Contains(remark.Id) && context.Reports.Any(
            report => report.Id == remark.ReportId && context.RoundsOf(caller).Any(round => round.Id == report.RoundId))).ToListAsync(cancel);
        if (remarks.Count == 0 || remarks.Count != remarkIds.Distinct().Count()) return Outcome.Refused(RoundRefusals.NoRemark);
        if (tidy.MendedIn is { } version && !await HasVersionAsync(context, remarks[0].ReportId, version, cancel)) return Outcome.Refused(RoundRefusals.NoVersion with { Field = nameof(tidy.MendedIn) });
        foreach (Remark remark in remarks) remark.Reply(tidy);
        await context.SaveChangesAsync(cancel);
        return Outcome.Done;
    }

    private static IEnumerable<FieldMessage> Faults(RemarkAnswer answer)
    {
        if (answer.Kind == AnswerKind.Mended && answer.MendedIn is null)
            yield return new(nameof(answer.MendedIn), "Say in which version it is mended.");
        if (answer.Kind == AnswerKind.Words && answer.Words.Length == 0)
            yield return new(nameof(answer.Words), "Write the answer, or choose another.");
        foreach (FieldMessage fault in Wording.ShortFaults(nameof(answer.Words), "The answer", answer.Words, Remark.TextLength)) yield return fault;
    }

    private static Task<bool> HasVersionAsync(StudioDbContext context, Guid reportId, int number, CancellationToken cancel) => (
        from report in context.Reports
        where report.Id == reportId
        join round in context.Rounds on report.RoundId equals round.Id
        join version in context.Versions on round.DesignId equals version.DesignId
        where version.Number == number
        select version).AnyAsync(cancel);
}
