using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>Nobody reaches into another studio, whatever ids they know.</summary>
public sealed class ApartnessTests
{
    [Fact]
    public async Task A_design_of_another_studio_can_not_be_seen()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller stranger, Guid design, _, _) = await FurnishAsync(studio);

        Assert.Null(await studio.Desk.OpenAsync(stranger, design));
        Assert.Equal(0, (await studio.Library.ListAsync(stranger, new())).Total);
        Assert.Empty(await studio.Versions.ListAsync(stranger, design));
        Assert.Null(await studio.Versions.FindAsync(stranger, design, 1));
        Assert.Empty(await studio.Swatches.ListAsync(stranger, design));
        Assert.Empty(await studio.Yarns.ListAsync(stranger));
    }

    [Fact]
    public async Task Nothing_of_another_studio_can_be_changed()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller stranger, Guid design, Guid swatch, Guid yarn) = await FurnishAsync(studio);

        Assert.IsType<Refused>(await studio.Desk.SaveAsync(stranger, design, "theirs", 1));
        Outcome[] refused =
        [
            await studio.Desk.RenameAsync(stranger, design, "Theirs"),
            await studio.Desk.MoveToAsync(stranger, design, DesignState.Published),
            await studio.Desk.DeleteAsync(stranger, design),
            await studio.Desk.RestoreAsync(stranger, design),
            await studio.Swatches.PutBackAsync(stranger, new RemovedSwatch(design, Texts.Swatch, null, true)),
            await studio.Swatches.ChooseAsync(stranger, design, null),
            await studio.Yarns.RemoveAsync(stranger, yarn),
            await studio.Yarns.ChooseAsync(stranger, design, null),
        ];
        Assert.All(refused, outcome => Assert.False(outcome.Succeeded));
        Assert.False((await studio.Swatches.RemoveAsync(stranger, swatch)).Succeeded);
        Assert.False((await studio.Swatches.AddAsync(stranger, design, Texts.Swatch)).Succeeded);
        Assert.False((await studio.Swatches.ChangeAsync(stranger, swatch, Texts.Swatch)).Succeeded);
        Assert.False((await studio.Yarns.ChangeAsync(stranger, yarn, Texts.Yarn)).Succeeded);
    }

    [Fact]
    public async Task What_belongs_to_another_studio_can_not_be_brought_into_ones_own()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        (Caller stranger, _, Guid swatch, Guid yarn) = await FurnishAsync(studio);
        Guid own = await studio.NewDesignAsync(stranger);

        Assert.False((await studio.Yarns.ChooseAsync(stranger, own, yarn)).Succeeded);
        Assert.False((await studio.Swatches.ChooseAsync(stranger, own, swatch)).Succeeded);
        Outcome<Guid> added = await studio.Swatches.AddAsync(stranger, own, Texts.Swatch with { YarnId = yarn });
        Assert.Equal("YarnId", Assert.Single(added.Messages).Field);
    }

    [Fact]
    public async Task A_caller_who_claims_a_studio_without_being_a_member_gets_nothing()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller owner = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(owner);
        Caller pretender = new((await studio.NewCallerAsync()).AccountId, owner.StudioId);

        Assert.Null(await studio.Desk.OpenAsync(pretender, design));
        Assert.Equal(0, (await studio.Library.ListAsync(pretender, new())).Total);
        Assert.False((await studio.Desk.CreateAsync(pretender, "Theirs")).Succeeded);
        Assert.False((await studio.Yarns.AddAsync(pretender, Texts.Yarn)).Succeeded);
        Assert.Null(await studio.Memberships.StudioNameAsync(pretender));
    }

    private static async Task<(Caller Stranger, Guid Design, Guid Swatch, Guid Yarn)> FurnishAsync(TestStudio studio)
    {
        Caller owner = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(owner);
        Guid yarn = (await studio.Yarns.AddAsync(owner, Texts.Yarn)).Value;
        Guid swatch = (await studio.Swatches.AddAsync(owner, design, Texts.Swatch)).Value;
        return (await studio.NewCallerAsync("Drift"), design, swatch, yarn);
    }
}
