using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

public sealed class SavingTests
{
    [Fact]
    public async Task A_new_design_opens_with_its_first_version_and_results()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();

        Guid id = await studio.NewDesignAsync(caller, "  Wrack Line Cloth ");
        OpenDesign? open = await studio.Desk.OpenAsync(caller, id);

        Assert.NotNull(open);
        Assert.Equal(("Wrack Line Cloth", DesignState.Idea, Texts.Cloth, 1), (open.Title, open.State, open.Text, open.Version));
        Assert.Equivalent(DesignResults.Compute(Texts.Cloth), open.Results, strict: true);
    }

    [Fact]
    public async Task Saving_stores_text_version_and_results_together()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        Saved saved = Assert.IsType<Saved>(await studio.Desk.SaveAsync(caller, id, Texts.WrongCloth, 1));

        Assert.Equal(2, saved.Version);
        Assert.Equivalent(DesignResults.Compute(Texts.WrongCloth), saved.Results, strict: true);
        OpenDesign open = (await studio.Desk.OpenAsync(caller, id))!;
        Assert.Equal((Texts.WrongCloth, 2, saved.SavedAt), (open.Text, open.Version, open.Updated));
        Assert.Equivalent(saved.Results, open.Results, strict: true);
    }

    [Fact]
    public async Task Every_save_is_kept_with_its_number_date_and_writer()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller, text: "first");
        for (int version = 1; version <= 3; version++)
            await studio.Desk.SaveAsync(caller, id, $"text {version + 1}", version);

        IReadOnlyList<VersionSummary> versions = await studio.Versions.ListAsync(caller, id);

        Assert.Equal([4, 3, 2, 1], versions.Select(version => version.Number));
        Assert.True(versions.Zip(versions.Skip(1)).All(pair => pair.First.SavedAt > pair.Second.SavedAt));
        Assert.All(versions, version => Assert.EndsWith("@example.com", version.SavedBy, StringComparison.Ordinal));
        Assert.Equal("first", (await studio.Versions.FindAsync(caller, id, 1))!.Text);
        Assert.Equal("text 3", (await studio.Versions.FindAsync(caller, id, 3))!.Text);
        Assert.Null(await studio.Versions.FindAsync(caller, id, 5));
    }

    [Fact]
    public async Task Only_the_latest_version_keeps_its_whole_results()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        await studio.Desk.SaveAsync(caller, id, Texts.WrongCloth, 1);

        await using var context = studio.Context();

        Assert.Equal([false, true], context.Computations.OrderBy(it => it.Version).Select(it => it.Whole != null));
    }

    [Fact]
    public async Task Saving_the_same_text_makes_no_new_version()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        Saved saved = Assert.IsType<Saved>(await studio.Desk.SaveAsync(caller, id, Texts.Cloth, 1));

        Assert.Equal(1, saved.Version);
        Assert.Single(await studio.Versions.ListAsync(caller, id));
    }

    [Fact]
    public async Task A_text_that_is_too_long_is_refused_and_nothing_changes()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        Refused refused = Assert.IsType<Refused>(await studio.Desk.SaveAsync(caller, id, new string('x', 2_000_001), 1));

        Assert.Equal(
            [new FieldMessage("text", "The pattern has 2,000,001 characters; 2,000,000 can be kept. Divide it into several designs.")],
            refused.Messages);
        Assert.Equal(1, (await studio.Desk.OpenAsync(caller, id))!.Version);
    }

    [Theory]
    [InlineData("Ch 21.\nRow 1:\0 sc", "Line 2 holds a character that can't be kept, at column 7. Delete it and type it anew.")]
    [InlineData("<half>", "Line 1 holds a character that can't be kept, at column 1. Delete it and type it anew.")]
    public async Task A_character_that_no_store_keeps_is_refused_at_its_place(string text, string message)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        Refused refused = Assert.IsType<Refused>(await studio.Desk.SaveAsync(
            caller, id, text.Replace("<half>", "\ud83e", StringComparison.Ordinal), 1));

        Assert.Equal([new FieldMessage("text", message)], refused.Messages);
    }

    [Fact]
    public async Task Line_ends_and_every_script_come_back_as_written()
    {
        const string text = "Ch 21.\r\nRow 1: かぎ針 🧶 — ½\rRow 2:\n";
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();

        Guid id = await studio.NewDesignAsync(caller, text: text);

        Assert.Equal(text, (await studio.Desk.OpenAsync(caller, id))!.Text);
    }

    [Theory]
    [InlineData(" ", "The design needs a name. Enter one.")]
    [InlineData("long", "The name of the design has 201 characters. Shorten it to 200 or fewer.")]
    public async Task A_title_that_does_not_do_is_refused(string title, string message)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        string asked = title == "long" ? new string('x', 201) : title;

        Assert.Equal([new FieldMessage("title", message)], (await studio.Desk.CreateAsync(caller, asked)).Messages);
        Assert.Equal([new FieldMessage("title", message)], (await studio.Desk.RenameAsync(caller, id, asked)).Messages);
    }

    [Fact]
    public async Task A_design_is_renamed_moved_on_deleted_and_brought_back()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        Assert.True((await studio.Desk.RenameAsync(caller, id, "Strand Cloth")).Succeeded);
        Assert.True((await studio.Desk.MoveToAsync(caller, id, DesignState.Testing)).Succeeded);
        Assert.True((await studio.Desk.DeleteAsync(caller, id)).Succeeded);
        Assert.Null(await studio.Desk.OpenAsync(caller, id));
        Assert.Equal(0, (await studio.Library.ListAsync(caller, new())).Total);
        Assert.False((await studio.Desk.RenameAsync(caller, id, "Gone")).Succeeded);

        Assert.True((await studio.Desk.RestoreAsync(caller, id)).Succeeded);
        OpenDesign back = (await studio.Desk.OpenAsync(caller, id))!;
        Assert.Equal(("Strand Cloth", DesignState.Testing), (back.Title, back.State));
    }

    [Fact]
    public async Task Results_of_another_engine_version_are_computed_anew_on_opening()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        await MakeStaleAsync(studio);

        OpenDesign open = (await studio.Desk.OpenAsync(caller, id))!;

        Assert.Equivalent(DesignResults.Compute(Texts.Cloth), open.Results, strict: true);
        await using var after = studio.Context();
        Assert.Equal(DesignResults.EngineVersion, after.Computations.Single().EngineVersion);
    }

    [Fact]
    public async Task After_a_renewal_all_stale_results_are_brought_up_to_date_once()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        await studio.NewDesignAsync(caller);
        await MakeStaleAsync(studio);
        await studio.NewDesignAsync(caller);

        Assert.Equal(1, await studio.Get<DesignRefresh>().RunAsync());
        Assert.Equal(0, await studio.Get<DesignRefresh>().RunAsync());
    }

    /// <summary>As if another make of the program had computed it, and differently.</summary>
    private static async Task MakeStaleAsync(TestStudio studio)
    {
        await using var context = studio.Context();
        Computation stored = context.Computations.Single();
        stored.Take(DesignResults.Compute("Ch 2.") with { EngineVersion = "0.0.1" }, studio.Clock.GetUtcNow());
        await context.SaveChangesAsync();
    }
}
