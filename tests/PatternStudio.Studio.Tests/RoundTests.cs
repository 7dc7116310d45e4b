using PatternStudio.Craft.Measuring.Makers;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Studio.Tests;

public sealed class RoundTests
{
    private const string Sized = """
        # Cockle Band
        Sizes: Small (Medium, Large)

        Ch 17 (19, 21).
        Row 1: Sc in 2nd ch from hook and in each ch across. 16 (18, 20) sc
        """;

    public static TheoryData<string> Scenes => [.. typeof(RoundScenes).GetMethods().Where(method => method.ReturnType == typeof(Task)).Select(method => method.Name)];

    [Theory]
    [MemberData(nameof(Scenes))]
    public async Task On_SQLite(string scene)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        await (Task)typeof(RoundScenes).GetMethod(scene)!.Invoke(null, [studio])!;
    }

    [Fact]
    public async Task A_plan_says_what_is_wrong_with_it_field_by_field()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid design, _) = await RoundScenes.BeginAsync(studio);
        RoundPlan plan = RoundScenes.Plan(studio);
        TestRounds rounds = studio.Get<TestRounds>();

        Outcome<Guid> wrong = await rounds.BeginAsync(caller, design, plan with { Ends = plan.Opens.AddDays(-1), Testers = 0, Sizes = [], Asked = AskedFor.None });
        Assert.Equal(["Ends", "Testers", "Sizes", "Asked"], wrong.Messages.Select(message => message.Field));
        Assert.Equal("Version", Assert.Single((await rounds.BeginAsync(caller, design, plan with { Version = 7 })).Messages).Field);
        Assert.Equal("Sizes", Assert.Single((await rounds.BeginAsync(caller, design, plan with { Sizes = [0, 3] })).Messages).Field);
    }

    [Fact]
    public async Task A_report_says_what_is_wrong_with_it_field_by_field()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, _, Guid round) = await RoundScenes.BeginAsync(studio);
        MadeLink link = await RoundScenes.LinkAsync(studio, caller, round);
        TesterReports reports = studio.Get<TesterReports>();

        Assert.Equal("The report is empty. Fill in what you measured, or say something about a row.", (await reports.SendAsync(link.Token, RoundScenes.Sent(new ReportDetails(0)))).ToString());
        Outcome<ArrivedReport> wrong = await reports.SendAsync(link.Token, RoundScenes.Sent(
            new ReportDetails(0) { Stitches = 17, YarnGrams = -3, WidthCm = double.NaN }, new RemarkDetails("Row 2", "", " "), new RemarkDetails("", "", "fine\0")));
        Assert.Equal(["OverCm", "YarnGrams", "WidthCm", "Remarks[0].Text", "Remarks[1].Text"], wrong.Messages.Select(message => message.Field));
    }

    [Fact]
    public async Task A_report_is_of_a_size_that_the_version_has()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller, text: Sized);
        Guid round = (await studio.Get<TestRounds>().BeginAsync(caller, design, RoundScenes.Plan(studio))).Value;
        MadeLink link = await RoundScenes.LinkAsync(studio, caller, round);
        foreach (int wrong in (int[])[-1, 3])
        {
            Outcome<ArrivedReport> refused = await studio.Get<TesterReports>().SendAsync(link.Token, RoundScenes.Sent(new ReportDetails(wrong) { Minutes = 60 }));
            Assert.Equal(new FieldMessage("Size", "Choose the size that you made. Version 1 has Small, Medium, Large."), Assert.Single(refused.Messages));
        }

        Assert.True((await studio.Get<TesterReports>().SendAsync(link.Token, RoundScenes.Sent(new ReportDetails(2) { Minutes = 60 }))).Succeeded);
    }

    [Fact]
    public async Task A_report_can_be_added_to_and_stays_with_its_version()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid design, Guid round) = await RoundScenes.BeginAsync(studio);
        MadeLink link = await RoundScenes.LinkAsync(studio, caller, round);
        Guid report = (await studio.Get<TesterReports>().SendAsync(link.Token, RoundScenes.Sent())).Value!.Id;
        await studio.Desk.SaveAsync(caller, design, RoundScenes.Gauged.Replace("each sc across", "each st across", StringComparison.Ordinal), 1);
        Assert.True((await studio.Get<TestRounds>().ChangeAsync(caller, round, RoundScenes.Plan(studio, 2))).Succeeded);

        OpenLink open = (await studio.Get<TestersDoor>().OpenAsync(link.Token))!;
        Assert.Equal((2, 1, RoundScenes.Gauged), (open.Plan.Version, open.Before!.Number, open.Before.Text));
        ReportDetails more = RoundScenes.Report with { YarnGrams = 12, BallMetres = 85, BallGrams = 50 };
        Assert.Equal(report, (await studio.Get<TesterReports>().SendAsync(link.Token, RoundScenes.Sent(more) with { AddsTo = report })).Value!.Id);
        KeptReport kept = Assert.Single((await studio.Get<TestRounds>().OpenAsync(caller, round))!.Reports);
        Assert.Equal((more, 1), (kept.Details, kept.Version));
    }

    [Fact]
    public async Task Nobody_adds_to_the_report_of_another()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, _, Guid round) = await RoundScenes.BeginAsync(studio);
        MadeLink ada = await RoundScenes.LinkAsync(studio, caller, round), bea = await RoundScenes.LinkAsync(studio, caller, round, "Bea");
        Guid hers = (await studio.Get<TesterReports>().SendAsync(ada.Token, RoundScenes.Sent())).Value!.Id;

        Guid sent = (await studio.Get<TesterReports>().SendAsync(bea.Token, RoundScenes.Sent(new ReportDetails(0) { Minutes = 9 }) with { AddsTo = hers })).Value!.Id;

        Assert.NotEqual(hers, sent);
        Assert.Equal(RoundScenes.Report, Assert.Single((await studio.Get<TestersDoor>().OpenAsync(ada.Token))!.Reports).Details);
    }

    [Fact]
    public async Task Another_studio_sees_and_changes_nothing()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid design, Guid round) = await RoundScenes.BeginAsync(studio);
        MadeLink link = await RoundScenes.LinkAsync(studio, caller, round);
        await studio.Get<TesterReports>().SendAsync(link.Token, RoundScenes.Sent(null, new RemarkDetails("Row 2", "", "Which?")));
        Guid remark = (await studio.Get<TestRounds>().OpenAsync(caller, round))!.Remarks[0].Id;
        Caller stranger = await studio.NewCallerAsync("Drift");
        TestRounds rounds = studio.Get<TestRounds>();

        Assert.Empty(await rounds.ListAsync(stranger, design));
        Assert.Null(await rounds.OpenAsync(stranger, round));
        Outcome[] refused =
        [
            await rounds.ChangeAsync(stranger, round, RoundScenes.Plan(studio)),
            await rounds.EndAsync(stranger, round),
            await studio.Get<ShareLinks>().RevokeAsync(stranger, link.Id),
            await studio.Get<RemarkAnswers>().AnswerAsync(stranger, [remark], new(AnswerKind.AsIntended, null, "")),
        ];
        Assert.All(refused, outcome => Assert.False(outcome.Succeeded));
        Assert.False((await rounds.BeginAsync(stranger, design, RoundScenes.Plan(studio))).Succeeded);
        Assert.False((await studio.Get<ShareLinks>().MakeForAllAsync(stranger, round, 5)).Succeeded);
    }

    /// <summary>Five testers count 17 sts where 16 are printed; the cloth is 16 sts wide: 10 cm printed, 9.4 cm with 17.</summary>
    [Fact]
    public async Task What_testers_tell_is_weighed_against_the_version_they_worked_from()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, _, Guid round) = await RoundScenes.BeginAsync(studio);
        foreach (string name in (string[])["Ada", "Bea", "Cleo", "Dot", "Eve"])
            await studio.Get<TesterReports>().SendAsync((await RoundScenes.LinkAsync(studio, caller, round, name)).Token, RoundScenes.Sent());

        RoundTelling told = await studio.Get<RoundStatistics>().TellAsync(caller, (await studio.Get<TestRounds>().OpenAsync(caller, round))!);

        Assert.Equal(10, told.Expected.Sizes[0].Width!.Value.Centimetres, 6);
        Assert.Equal((5, 17 / 16.0), (told.Evidence.Of(MakerMeasure.Stitches)!.Makers, told.Evidence.Of(MakerMeasure.Stitches)!.Median));
        Assert.Equal(0.94, told.Evidence.Of(MakerMeasure.Width)!.Median, 10);
        Assert.Equal([MakerMeasure.Stitches, MakerMeasure.Width], told.Evidence.Proposals.Select(proposal => proposal.Measure));
    }

    [Fact]
    public async Task Corrections_are_read_by_everybody_once_the_design_is_published()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller caller, Guid design, _) = await RoundScenes.BeginAsync(studio);
        Corrections corrections = studio.Get<Corrections>();
        var details = new CorrectionDetails(new DateOnly(2026, 11, 20), 1, "Row 2: ch 1 does not count.");
        Assert.Equal("Corrections are for published designs. Move the design to 'published' first.", (await corrections.AddAsync(caller, design, details)).ToString());

        await studio.Desk.MoveToAsync(caller, design, DesignState.Published);
        Assert.True((await corrections.AddAsync(caller, design, details)).Succeeded);
        Guid page = (await corrections.AddressAsync(caller, design)).Value;
        Assert.Equal(page, (await corrections.AddressAsync(caller, design)).Value);
        Assert.Equal(details, Assert.Single((await corrections.FindAsync(page))!.Corrections).Details);
        await studio.Desk.MoveToAsync(caller, design, DesignState.Writing);
        Assert.Null(await corrections.FindAsync(page));
        Assert.Null(await corrections.FindAsync(Guid.NewGuid()));
    }
}
