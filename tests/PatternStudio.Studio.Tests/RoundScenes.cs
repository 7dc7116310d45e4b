using PatternStudio.Studio.Data;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Studio.Tests;

/// <summary>What happens in test rounds, played on whatever store a test opens.</summary>
internal static class RoundScenes
{
    public const string Gauged = """
        # Wrack Line Cloth
        ## Gauge
        16 sts and 18 rows = 10 cm (4 in).

        Ch 17.
        Row 1: Sc in 2nd ch from hook and in each ch across. (16 sc)
        Row 2: Ch 1, turn, sc in each sc across. (16 sc)
        Rows 3–18: Rep Row 2.
        """;

    public static readonly ReportDetails Report = new(0) { Stitches = 17, Rows = 18, OverCm = 10, HookMm = 4.5, WidthCm = 9.4, HeightCm = 10, Minutes = 55 };

    public static RoundPlan Plan(TestStudio studio, int version = 1)
    {
        DateOnly today = DateOnly.FromDateTime(studio.Clock.GetUtcNow().UtcDateTime);
        return new(version, today, today.AddDays(14), 5, [0], AskedFor.Everything, true, "Thank you for testing.");
    }

    public static async Task<(Caller Caller, Guid Design, Guid Round)> BeginAsync(TestStudio studio)
    {
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller, text: Gauged);
        Outcome<Guid> begun = await studio.Get<TestRounds>().BeginAsync(caller, design, Plan(studio));
        Assert.True(begun.Succeeded, begun.ToString());
        return (caller, design, begun.Value);
    }

    public static async Task<MadeLink> LinkAsync(TestStudio studio, Caller caller, Guid round, string name = "Ada")
    {
        Outcome<MadeLink> made = await studio.Get<ShareLinks>().MakeForAsync(caller, round, name, null);
        Assert.True(made.Succeeded, made.ToString());
        return made.Value!;
    }

    public static SentReport Sent(ReportDetails? details = null, params RemarkDetails[] remarks) => new("", details ?? Report, [.. remarks.Select(remark => new SentRemark(remark, null))]);

    /// <summary>From the link to the designer's answer and back to the tester.</summary>
    public static async Task A_report_reaches_the_designer_and_its_answer_the_tester(TestStudio studio)
    {
        (Caller caller, _, Guid round) = await BeginAsync(studio);
        MadeLink link = await LinkAsync(studio, caller, round);
        PreparedPhoto photo = PhotoReader.Read(PhotoTests.Jpeg(60, 40)).Value!;

        OpenLink open = (await studio.Get<TestersDoor>().OpenAsync(link.Token))!;
        Assert.Equal(("Wrack Line Cloth", Gauged, "Ada"), (open.Title, open.Text, open.Tester!.Name));
        SentReport sent = Sent() with { Remarks = [new SentRemark(new("Row 2", "each sc", "Does the turning chain count?"), photo)] };
        Outcome<ArrivedReport> arrived = await studio.Get<TesterReports>().SendAsync(link.Token, sent);
        Assert.True(arrived.Succeeded, arrived.ToString());
        Assert.Null(arrived.Value!.OwnToken);

        RoundBook book = (await studio.Get<TestRounds>().OpenAsync(caller, round))!;
        Assert.Equal((Report, 1), (Assert.Single(book.Reports).Details, book.Reports[0].Version));
        KeptRemark remark = Assert.Single(book.Remarks);
        Assert.Equal(photo.Picture, await studio.Photos.FindAsync(caller, remark.PhotoId!.Value, small: false));
        var answer = new RemarkAnswer(AnswerKind.Words, null, "It does not.");
        Assert.True((await studio.Get<RemarkAnswers>().AnswerAsync(caller, [remark.Id], answer)).Succeeded);
        Assert.Equal(answer, Assert.Single((await studio.Get<TestersDoor>().OpenAsync(link.Token))!.Remarks).Answer);
    }

    /// <summary>Twelve send at once through a link for five: five arrive, and each of them has a link of her own.</summary>
    public static async Task A_link_sends_as_many_reports_as_it_may_and_no_more(TestStudio studio)
    {
        (Caller caller, _, Guid round) = await BeginAsync(studio);
        MadeLink all = (await studio.Get<ShareLinks>().MakeForAllAsync(caller, round, 5)).Value!;

        Outcome<ArrivedReport>[] outcomes = await Task.WhenAll(Enumerable.Range(0, 12).Select(
            at => Task.Run(() => studio.Get<TesterReports>().SendAsync(all.Token, Sent() with { Name = $"Tester {at}" }))));

        Assert.Equal(5, outcomes.Count(outcome => outcome.Succeeded));
        RoundBook book = (await studio.Get<TestRounds>().OpenAsync(caller, round))!;
        Assert.Equal((5, 5, 6), (book.Reports.Count, book.Testers.Count, book.Links.Count));
        string own = outcomes.First(outcome => outcome.Succeeded).Value!.OwnToken!;
        Assert.Single((await studio.Get<TestersDoor>().OpenAsync(own))!.Reports);
    }

    /// <summary>Ada opens her link at version 1, Bea at version 2, Cleo at version 3: each is told what changed since.</summary>
    public static async Task What_changed_is_told_from_the_version_that_she_began_with(TestStudio studio)
    {
        (Caller caller, Guid design, Guid round) = await BeginAsync(studio);
        TestersDoor door = studio.Get<TestersDoor>();
        MadeLink ada = await LinkAsync(studio, caller, round), bea = await LinkAsync(studio, caller, round, "Bea"), cleo = await LinkAsync(studio, caller, round, "Cleo");
        MadeLink all = (await studio.Get<ShareLinks>().MakeForAllAsync(caller, round, 5)).Value!;

        Assert.Null((await door.OpenAsync(ada.Token))!.Before);
        await ShowNextVersionAsync(studio, caller, design, round, 2);
        Assert.Null((await door.OpenAsync(bea.Token))!.Before);
        await studio.Get<Openings>().SettleAsync();
        await ShowNextVersionAsync(studio, caller, design, round, 3);

        Assert.Equal(new VersionBefore(1, Gauged), (await door.OpenAsync(ada.Token))!.Before);
        Assert.Equal(2, (await door.OpenAsync(bea.Token))!.Before!.Number);
        OpenLink fresh = (await door.OpenAsync(cleo.Token))!;
        Assert.Equal((3, null), (fresh.BeganWith, fresh.Before));
        Assert.Equal([1, 2, 3], fresh.Versions);
        // Nothing is known of a link that is for all, but what the device says; what can't be is as if nothing was said.
        Assert.Null((await door.OpenAsync(all.Token))!.Before);
        Assert.Equal(1, (await door.OpenAsync(all.Token, began: 1))!.Before!.Number);
        Assert.Null((await door.OpenAsync(all.Token, began: 7))!.Before);
        // What she says herself counts more than what her link remembers.
        Assert.Equal(2, (await door.OpenAsync(ada.Token, began: 2))!.BeganWith);
    }

    /// <summary>Unless she says otherwise, a report belongs to the version that she began with; one that the round never showed counts for nothing.</summary>
    public static async Task A_report_belongs_to_the_version_that_it_was_worked_from(TestStudio studio)
    {
        (Caller caller, Guid design, Guid round) = await BeginAsync(studio);
        TesterReports reports = studio.Get<TesterReports>();
        MadeLink ada = await LinkAsync(studio, caller, round), bea = await LinkAsync(studio, caller, round, "Bea");
        MadeLink all = (await studio.Get<ShareLinks>().MakeForAllAsync(caller, round, 5)).Value!;
        await studio.Get<TestersDoor>().OpenAsync(ada.Token);
        await studio.Get<Openings>().SettleAsync();
        await ShowNextVersionAsync(studio, caller, design, round, 2);

        Assert.True((await reports.SendAsync(ada.Token, Sent())).Succeeded);
        Assert.True((await reports.SendAsync(ada.Token, Sent() with { Version = 2 })).Succeeded);
        Assert.True((await reports.SendAsync(bea.Token, Sent() with { Version = 9 })).Succeeded);
        string own = (await reports.SendAsync(all.Token, Sent() with { Name = "Cleo", Version = 1 })).Value!.OwnToken!;

        RoundBook book = (await studio.Get<TestRounds>().OpenAsync(caller, round))!;
        Assert.Equal([("Ada", 1), ("Ada", 2), ("Bea", 2), ("Cleo", 1)], book.Reports.Select(report => (report.TesterName, report.Version)));
        Assert.Equal(1, (await studio.Get<TestersDoor>().OpenAsync(own))!.BeganWith);
    }

    /// <summary>Every version has one row more.</summary>
    private static async Task ShowNextVersionAsync(TestStudio studio, Caller caller, Guid design, Guid round, int version)
    {
        string text = (await studio.Desk.OpenAsync(caller, design))!.Text;
        await studio.Desk.SaveAsync(caller, design, $"{text}\nRow {17 + version}: Ch 1, turn, sc in each sc across. (16 sc)", version - 1);
        Outcome changed = await studio.Get<TestRounds>().ChangeAsync(caller, round, Plan(studio, version));
        Assert.True(changed.Succeeded, changed.ToString());
    }

    /// <summary>A link ends on its own last day, which lies within the round's; links open from the round's first day on, as it begins in the east (UTC + 14).</summary>
    public static async Task Links_open_on_their_own_days(TestStudio studio)
    {
        (Caller caller, _, Guid round) = await BeginAsync(studio);
        (ShareLinks links, TestersDoor door, RoundPlan plan) = (studio.Get<ShareLinks>(), studio.Get<TestersDoor>(), Plan(studio));
        MadeLink brief = (await links.MakeForAsync(caller, round, "Ada", null, plan.Opens.AddDays(3))).Value!;
        Assert.Equal("lastDay", Assert.Single((await links.MakeForAsync(caller, round, "Bea", null, plan.Ends.AddDays(1))).Messages).Field);
        Assert.Equal("lastDay", Assert.Single((await links.MakeForAllAsync(caller, round, 5, plan.Opens.AddDays(-1))).Messages).Field);
        Assert.Equal("mostReports", Assert.Single((await links.MakeForAllAsync(caller, round, 0)).Messages).Field);
        Assert.Equal(plan.Opens.AddDays(3), Assert.Single((await studio.Get<TestRounds>().OpenAsync(caller, round))!.Links).LastDay);

        studio.Clock.Advance(TimeSpan.FromDays(3));
        Assert.NotNull(await door.OpenAsync(brief.Token));
        studio.Clock.Advance(TimeSpan.FromDays(2));
        Assert.Null(await door.OpenAsync(brief.Token));
        Assert.True(Assert.Single((await studio.Get<TestRounds>().OpenAsync(caller, round))!.Links).Over);

        RoundPlan later = Plan(studio) with { Opens = plan.Opens.AddDays(8), Ends = plan.Ends.AddDays(8) };
        Assert.True((await studio.Get<TestRounds>().ChangeAsync(caller, round, later)).Succeeded);
        MadeLink early = await LinkAsync(studio, caller, round, "Cleo");
        Assert.False((await studio.Get<TestRounds>().OpenAsync(caller, round))!.Begun);
        Assert.Null(await door.OpenAsync(early.Token));
        Assert.False((await studio.Get<TesterReports>().SendAsync(early.Token, Sent())).Succeeded);
        studio.Clock.Advance(TimeSpan.FromDays(3));
        Assert.NotNull(await door.OpenAsync(early.Token));
    }

    public static async Task Corrections_can_be_changed_and_withdrawn_and_say_so(TestStudio studio)
    {
        (Caller caller, Guid design, _) = await BeginAsync(studio);
        await studio.Desk.MoveToAsync(caller, design, Designs.DesignState.Published);
        Corrections corrections = studio.Get<Corrections>();
        DateOnly found = new(2026, 11, 20), changed = new(2026, 11, 22), withdrawn = new(2026, 11, 25);
        Guid id = (await corrections.AddAsync(caller, design, new(found, 1, "Row 2: 15 sc."))).Value;
        Guid page = (await corrections.AddressAsync(caller, design)).Value;

        Assert.Equal("Words", Assert.Single((await corrections.ChangeAsync(caller, id, new(changed, 1, " "))).Messages).Field);
        Assert.False((await corrections.ChangeAsync(caller, id, new(changed, 4, "Row 2: 16 sc."))).Succeeded);
        Assert.True((await corrections.ChangeAsync(caller, id, new(changed, 1, "Row 2: 16 sc."))).Succeeded);
        KeptCorrection kept = Assert.Single((await corrections.FindAsync(page))!.Corrections);
        Assert.Equal((new CorrectionDetails(found, 1, "Row 2: 16 sc."), changed), (kept.Details, kept.Changed));
        Assert.Equal([new CorrectionDetails(found, 1, "Row 2: 15 sc.")], kept.Earlier);

        Caller stranger = await studio.NewCallerAsync("Drift");
        Assert.False((await corrections.ChangeAsync(stranger, id, new(changed, 1, "No."))).Succeeded);
        Assert.False((await corrections.WithdrawAsync(stranger, id, withdrawn)).Succeeded);
        Assert.True((await corrections.WithdrawAsync(caller, id, withdrawn)).Succeeded);
        Assert.Equal(withdrawn, Assert.Single((await corrections.FindAsync(page))!.Corrections).Withdrawn);
        Assert.Equal("This correction was withdrawn. Publish a new one instead.", (await corrections.ChangeAsync(caller, id, new(withdrawn, 1, "Again."))).ToString());
    }

    public static async Task Tokens_are_nowhere_in_the_store(TestStudio studio)
    {
        (Caller caller, _, Guid round) = await BeginAsync(studio);
        MadeLink link = await LinkAsync(studio, caller, round);
        await using StudioDbContext context = studio.Context();
        ShareLink kept = Assert.Single(context.Links.ToList());
        Assert.Equal(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.ASCII.GetBytes(link.Token)), kept.TokenHash);
        Assert.Equal(43, link.Token.Length); // 256 bits in letters of 6 bits
    }

    public static async Task Every_closed_door_looks_the_same(TestStudio studio)
    {
        (Caller caller, Guid design, Guid round) = await BeginAsync(studio);
        TestersDoor door = studio.Get<TestersDoor>();
        MadeLink revoked = await LinkAsync(studio, caller, round), link = await LinkAsync(studio, caller, round, "Bea");
        Assert.True((await studio.Get<ShareLinks>().RevokeAsync(caller, revoked.Id)).Succeeded);
        Assert.Null(await door.OpenAsync(revoked.Token));
        Assert.Null(await door.OpenAsync(""));
        Assert.Null(await door.OpenAsync(link.Token[..^1] + "_"));
        Assert.NotNull(await door.OpenAsync(link.Token));
        await studio.Desk.DeleteAsync(caller, design);
        Assert.Null(await door.OpenAsync(link.Token));
        await studio.Desk.RestoreAsync(caller, design);
        // Fourteen days of testing; the last one is over on the whole earth at noon of the fifteenth (UTC).
        studio.Clock.Advance(TimeSpan.FromDays(14));
        Assert.NotNull(await door.OpenAsync(link.Token));
        studio.Clock.Advance(TimeSpan.FromDays(2));
        Assert.Null(await door.OpenAsync(link.Token));
        Assert.Equal("This link does not open any more. Ask the designer for another.", (await studio.Get<TesterReports>().SendAsync(link.Token, Sent())).ToString());
    }
}
