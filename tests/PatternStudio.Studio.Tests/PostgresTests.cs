using Microsoft.EntityFrameworkCore;
using Npgsql;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>The same studio on PostgreSQL. Needs a server: tests/postgres-for-tests.sh starts one and prints its connection string.</summary>
public sealed class PostgresTests
{
    private const string Variable = "PATTERNSTUDIO_TEST_POSTGRES";

    [Fact]
    public Task The_sample_loads_and_lists() => WithStudioAsync(async studio =>
    {
        Caller caller = await studio.NewCallerAsync("", sample: true);

        DesignPage page = await studio.Library.ListAsync(caller, new("SQUARE", Order: DesignOrder.Title, Descending: false));

        Assert.Equal(["Kelp Bed Washcloth", "Pebble Beach Square", "Pier Lights Granny Square"], page.Designs.Select(line => line.Title));
    });

    [Fact]
    public Task Saves_are_kept_with_their_results_and_moments() => WithStudioAsync(async studio =>
    {
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        studio.Clock.Advance(TimeSpan.FromTicks(7));

        Saved saved = Assert.IsType<Saved>(await studio.Desk.SaveAsync(caller, id, Texts.WrongCloth, 1));

        OpenDesign open = (await studio.Desk.OpenAsync(caller, id))!;
        Assert.Equal((Texts.WrongCloth, 2, saved.SavedAt), (open.Text, open.Version, open.Updated));
        Assert.Equivalent(saved.Results, open.Results, strict: true);
    });

    [Fact]
    public Task Of_many_savers_at_once_exactly_one_wins() => WithStudioAsync(async studio =>
    {
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        SaveOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(
            writer => Task.Run(() => studio.Desk.SaveAsync(caller, id, $"text of writer {writer}", 1))));

        Assert.Single(outcomes.OfType<Saved>());
        Assert.Equal(7, outcomes.OfType<Conflict>().Count());
    });

    [Fact]
    public Task Swatches_and_yarns_calibrate_and_studios_stay_apart() => WithStudioAsync(async studio =>
    {
        Caller caller = await studio.NewCallerAsync();
        Caller stranger = await studio.NewCallerAsync("Drift");
        Guid id = await studio.NewDesignAsync(caller);
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        Guid swatch = (await studio.Swatches.AddAsync(caller, id, Texts.Swatch with { YarnId = yarn })).Value;

        Assert.True((await studio.Yarns.ChooseAsync(caller, id, yarn)).Succeeded);
        Assert.Equal(Texts.Swatch with { YarnId = yarn }, (await studio.Desk.OpenAsync(caller, id))!.Swatch);
        Assert.True((await studio.Swatches.RemoveAsync(caller, swatch)).Succeeded);
        Assert.Null(await studio.Desk.OpenAsync(stranger, id));
    });

    [Fact]
    public Task Photos_prices_and_lots_are_kept_and_no_gram_is_set_aside_twice() => WithStudioAsync(async studio =>
    {
        (Caller caller, Guid lot) = await StashTests.WithLotAsync(studio);
        KeptLot kept = Assert.Single(await studio.Stash.ListAsync(caller));
        YarnDetails priced = Texts.Yarn with { Price = 4.55m, Currency = "EUR", Care = "30 °C" };
        Assert.True((await studio.Yarns.ChangeAsync(caller, kept.Details.YarnId, priced, Texts.Yarn)).Succeeded);
        Guid[] designs = [await studio.NewDesignAsync(caller, "One"), await studio.NewDesignAsync(caller, "Two"), await studio.NewDesignAsync(caller, "Three")];
        PreparedPhoto photo = PhotoReader.Read(PhotoTests.Jpeg(60, 40)).Value!;
        await studio.Swatches.AddAsync(caller, designs[0], Texts.Swatch with { Counted = Counting.Repeats, StitchesEach = 6, FromRow = 2, ToRow = 3 }, photo);

        Outcome[] outcomes = await Task.WhenAll(designs.Select(design => Task.Run(() => studio.Stash.ReserveAsync(caller, design, lot, 80))));

        Assert.Equal(2, outcomes.Count(outcome => outcome.Succeeded));
        Assert.Equal((priced, 10), (Assert.Single(await studio.Stash.ListAsync(caller)).Yarn, Assert.Single(await studio.Stash.ListAsync(caller)).FreeGrams));
        Assert.Equal(photo.Picture, await studio.Photos.FindAsync(caller, Assert.Single(await studio.Swatches.ListAsync(caller, designs[0])).PhotoId!.Value, small: false));
    });

    [Fact]
    public Task Designs_are_found_tagged_copied_deleted_and_brought_back() => WithStudioAsync(async studio =>
    {
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller, "100% Élan", Texts.WrongCloth);
        Guid tag = (await studio.Tags.PutAsync(caller, "Spring", [id])).Value;
        Guid copy = (await studio.Copies.CopyAsync(caller, id, "Copy")).Value;
        await studio.Batch.MoveToAsync(caller, [copy], DesignState.Testing);

        Assert.Equal([id], (await studio.Library.ListAsync(caller, new("élan \"2nd ch\" 100%") { Tag = tag, WithFindings = true })).Designs.Select(line => line.Id));
        Assert.Equal([copy], await studio.Library.IdsAsync(caller, new("spring", DesignState.Testing)));
        Assert.Equal([copy], await studio.Batch.DeleteAsync(caller, [copy]));
        Assert.Equal(["Copy"], (await studio.Library.ListAsync(caller, new() { Deleted = true })).Designs.Select(line => line.Title));
        Assert.Equal(1, await studio.Batch.RestoreAsync(caller, [copy]));
        Assert.NotNull(await studio.Get<DesignPictures>().FindAsync(caller, copy));
    });

    [Fact]
    public Task A_studio_taken_out_comes_back() => WithStudioAsync(ArchiveTests.ComesBackAsync);

    [Fact]
    public Task Of_two_first_setups_at_the_same_moment_one_is_refused() => WithStudioAsync(async studio =>
    {
        Outcome<Caller>[] both = await Task.WhenAll(
            Task.Run(() => studio.Setup.CreateAsync("Dune", "mara@example.com", TestStudio.Password, false)),
            Task.Run(() => studio.Setup.CreateAsync("Drift", "finn@example.com", TestStudio.Password, false)));

        Assert.Single(both, outcome => outcome.Succeeded);
    }, openToAll: false);

    [Theory]
    [MemberData(nameof(RoundTests.Scenes), MemberType = typeof(RoundTests))]
    public Task Test_rounds(string scene) => WithStudioAsync(studio => (Task)typeof(RoundScenes).GetMethod(scene)!.Invoke(null, [studio])!);

    private static async Task WithStudioAsync(Func<TestStudio, Task> test, bool openToAll = true)
    {
        string? server = Environment.GetEnvironmentVariable(Variable);
        Assert.SkipWhen(string.IsNullOrEmpty(server),
            $"SKIPPED: no PostgreSQL server. Run tests/postgres-for-tests.sh and set {Variable} to what it prints.");
        var connection = new NpgsqlConnectionStringBuilder(server) { Database = $"studio_{Guid.NewGuid():N}" };
        await using TestStudio studio = await TestStudio.OpenAsync(TestStudio.NewFolder(), true, new()
        {
            ["Store:Kind"] = "Postgres",
            ["Store:Connection"] = connection.ConnectionString,
            ["Studio:OpenToAll"] = openToAll.ToString(),
        });
        try
        {
            await test(studio);
        }
        finally
        {
            await using var context = studio.Context();
            await context.Database.EnsureDeletedAsync();
        }
    }
}
