using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

public sealed class ColourYarnTests
{
    [Fact]
    public async Task Each_colour_has_its_yarn_until_another_or_none_is_chosen()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid dusk = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value, dawn = (await studio.Yarns.AddAsync(caller, Texts.Yarn with { ColourName = "Dawn" })).Value;
        ColourYarns colours = studio.Get<ColourYarns>();

        Assert.True((await colours.ChooseAsync(caller, design, "A", dusk)).Succeeded);
        Assert.True((await colours.ChooseAsync(caller, design, "a", dawn)).Succeeded);
        Assert.True((await colours.ChooseAsync(caller, design, "B", dusk)).Succeeded);
        Assert.True((await colours.ChooseAsync(caller, design, "A", dawn)).Succeeded);
        Assert.True((await colours.ChooseAsync(caller, design, "B", null)).Succeeded);

        Assert.Equal(new Dictionary<string, Guid> { ["A"] = dawn, ["a"] = dawn }, await colours.OfAsync(caller, design));
    }

    [Fact]
    public async Task What_is_not_there_or_not_hers_is_refused()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync(), other = await studio.NewCallerAsync("Other");
        Guid design = await studio.NewDesignAsync(caller);
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value, theirs = (await studio.Yarns.AddAsync(other, Texts.Yarn)).Value;
        ColourYarns colours = studio.Get<ColourYarns>();
        await colours.ChooseAsync(caller, design, "A", yarn);

        Assert.False((await colours.ChooseAsync(other, design, "A", theirs)).Succeeded);
        Assert.False((await colours.ChooseAsync(caller, design, "A", theirs)).Succeeded);
        Assert.Contains("Name the colour", (await colours.ChooseAsync(caller, design, "", yarn)).ToString(), StringComparison.Ordinal);
        Assert.Contains("Name the colour", (await colours.ChooseAsync(caller, design, new string('x', 101), yarn)).ToString(), StringComparison.Ordinal);
        Assert.Empty(await colours.OfAsync(other, design));
        Assert.Equal(yarn, (await colours.OfAsync(caller, design))["A"]);
    }

    [Fact]
    public async Task A_copy_has_them_too_and_a_yarn_in_use_stays()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller, "Striped");
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        await studio.Get<ColourYarns>().ChooseAsync(caller, design, "A", yarn);

        Guid copy = (await studio.Copies.CopyAsync(caller, design, "Striped again")).Value;

        Assert.Equal(yarn, (await studio.Get<ColourYarns>().OfAsync(caller, copy))["A"]);
        Assert.Contains("used by Striped, Striped again", (await studio.Yarns.RemoveAsync(caller, yarn)).ToString(), StringComparison.Ordinal);
    }
}
