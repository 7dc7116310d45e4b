using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

public sealed class TwoWritersTests
{
    [Fact]
    public async Task A_save_on_an_old_version_is_a_conflict_that_shows_theirs_and_writes_nothing()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        Saved theirs = Assert.IsType<Saved>(await studio.Desk.SaveAsync(caller, id, "theirs", 1));

        Conflict conflict = Assert.IsType<Conflict>(await studio.Desk.SaveAsync(caller, id, "mine", 1));

        Assert.Equal((2, "theirs", theirs.SavedAt), (conflict.TheirVersion, conflict.TheirText, conflict.SavedAt));
        Assert.EndsWith("@example.com", conflict.SavedBy, StringComparison.Ordinal);
        Assert.Equal("theirs", (await studio.Desk.OpenAsync(caller, id))!.Text);
        Assert.Equal(3, Assert.IsType<Saved>(await studio.Desk.SaveAsync(caller, id, "mine", conflict.TheirVersion)).Version);
    }

    [Fact]
    public async Task Two_who_changed_different_lines_are_shown_both_put_together()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller, text: "Ch 11.\nFasten off.");
        await studio.Desk.SaveAsync(caller, id, "Ch 11.\nFasten off. Block.", 1);

        Conflict conflict = Assert.IsType<Conflict>(await studio.Desk.SaveAsync(caller, id, "Ch 12.\nFasten off.", 1));

        Assert.Equal("Ch 12.\nFasten off. Block.", conflict.Together);
        Assert.Equal(conflict, await studio.Desk.CompareAsync(caller, id, "Ch 12.\nFasten off.", 1));
        Assert.Null((await studio.Desk.CompareAsync(caller, id, "Ch 11.\nFasten off. Steam.", 1))!.Together);
        Assert.Null((await studio.Desk.CompareAsync(caller, id, "Ch 12.\nFasten off.", 99))!.Together);
        Assert.Null(await studio.Desk.CompareAsync(await studio.NewCallerAsync(), id, "Ch 12.", 1));
    }

    [Fact]
    public async Task Of_many_savers_at_once_exactly_one_wins_and_the_others_see_the_winner()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        SaveOutcome[] outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(
            writer => Task.Run(() => studio.Desk.SaveAsync(caller, id, $"text of writer {writer}", 1))));

        Assert.Single(outcomes.OfType<Saved>());
        string kept = (await studio.Desk.OpenAsync(caller, id))!.Text;
        Assert.All(outcomes.OfType<Conflict>(), conflict => Assert.Equal((2, kept), (conflict.TheirVersion, conflict.TheirText)));
        Assert.Equal(7, outcomes.OfType<Conflict>().Count());
        Assert.Equal(2, (await studio.Versions.ListAsync(caller, id)).Count);
    }

    [Fact]
    public async Task Saving_and_renaming_at_once_keeps_both()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);

        Task<Outcome>[] renames = [.. Enumerable.Range(0, 4).Select(_ => Task.Run(() => studio.Desk.RenameAsync(caller, id, "Strand Cloth")))];
        SaveOutcome saved = await studio.Desk.SaveAsync(caller, id, "new text", 1);

        Assert.All(await Task.WhenAll(renames), renamed => Assert.True(renamed.Succeeded));
        Assert.IsType<Saved>(saved);
        OpenDesign open = (await studio.Desk.OpenAsync(caller, id))!;
        Assert.Equal(("Strand Cloth", "new text", 2), (open.Title, open.Text, open.Version));
    }
}
