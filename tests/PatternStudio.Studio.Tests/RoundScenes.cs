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
