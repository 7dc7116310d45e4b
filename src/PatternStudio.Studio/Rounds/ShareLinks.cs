using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Rounds;

/// <summary>Makes the links that open a round, and takes them back.</summary>
public sealed class ShareLinks(IDbContextFactory<StudioDbContext> contexts, TimeProvider clock)
{
    /// <summary>How often one tester may send: a piece for each size, and some more.</summary>
    private const int ReportsOfOne = 10;

    /// <summary>A link for one tester. Its token is shown now and never again.</summary>
    /// <param name="name">1 to <see cref="Tester.NameLength"/> characters.</param>
    /// <param name="size">0-based size that she is asked for; null to let her choose.</param>
    /// <param name="lastDay">The last day on which it opens, within the round; null for the round's own.</param>
    public async Task<Outcome<MadeLink>> MakeForAsync(Caller caller, Guid roundId, string name, int? size, DateOnly? lastDay = null, CancellationToken cancel = default)
    {
        string tidy = Wording.Tidy(name);
        FieldMessage[] faults = [.. Wording.NameFaults("name", "tester", tidy, Tester.NameLength)];
        return faults.Length > 0 ? Outcome.Refused(faults) : await MakeAsync(caller, roundId, round => new Tester(Guid.CreateVersion7(clock.Now()), round.Id, tidy, size, clock.Now()), new(ReportsOfOne, lastDay, null), cancel);
    }

    /// <summary>A link for all: whoever sends a report through it gets a link of her own.</summary>
    /// <param name="mostReports">How many testers may come that way; 1 to <see cref="ShareLink.MostReportsOfALink"/>.</param>
    /// <param name="lastDay">The last day on which it opens, within the round; null for the round's own. Whoever has sent a report comes back by her own link until the round ends.</param>
    public async Task<Outcome<MadeLink>> MakeForAllAsync(Caller caller, Guid roundId, int mostReports, DateOnly? lastDay = null, CancellationToken cancel = default) =>
        mostReports is < 1 or > ShareLink.MostReportsOfALink
            ? Outcome.Refused("mostReports", $"A link takes 1 to {ShareLink.MostReportsOfALink} reports. Choose a number between them.")
            : await MakeAsync(caller, roundId, _ => null, new(mostReports, lastDay, null), cancel);

    /// <summary>Takes a link back: it does not open from then on.</summary>
    public async Task<Outcome> RevokeAsync(Caller caller, Guid linkId, CancellationToken cancel = default)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        ShareLink? link = await context.Links.FirstOrDefaultAsync(it => it.Id == linkId && context.RoundsOf(caller).Any(round => round.Id == it.RoundId), cancel);
        if (link is null) return Outcome.Refused(RoundRefusals.NoLink);
        link.Revoke(clock.Now());
        await context.SaveChangesAsync(cancel);
        return Outcome.Done;
    }

    private async Task<Outcome<MadeLink>> MakeAsync(Caller caller, Guid roundId, Func<TestRound, Tester?> invite, LinkTerms terms, CancellationToken cancel)
    {
        await using StudioDbContext context = await contexts.CreateDbContextAsync(cancel);
        TestRound? round = await context.RoundsOf(caller).FirstOrDefaultAsync(it => it.Id == roundId, cancel);
        if (round is null) return Outcome.Refused(RoundRefusals.NoRound);
        if (terms.LastDay is { } day && RoundRefusals.OfLastDay(day, round, clock.Now()) is { } fault) return Outcome.Refused(fault);
        Tester? tester = invite(round);
        if (tester is not null) context.Testers.Add(tester);
        MadeLink made = Make(context, round, tester, terms, clock.Now());
        await context.SaveChangesAsync(cancel);
        return made;
    }

    private static MadeLink Make(StudioDbContext context, TestRound round, Tester? tester, LinkTerms terms, DateTimeOffset now)
    {
        string token = LinkToken.New();
        var link = new ShareLink(Guid.CreateVersion7(now), round.Id, tester?.Id, token, terms, now);
        context.Links.Add(link);
        return new MadeLink(link.Id, token);
    }

    /// <summary>A tester's own link, after she came by the link for all.</summary>
    /// <param name="version">The version that she works from.</param>
    internal static MadeLink MakeOwn(StudioDbContext context, TestRound round, Tester tester, int version, DateTimeOffset now) =>
        Make(context, round, tester, new(ReportsOfOne, null, version), now);
}
