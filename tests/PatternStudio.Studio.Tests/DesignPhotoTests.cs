using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

/// <summary>Photos of the finished piece, and which of them the shelf shows.</summary>
public sealed class DesignPhotoTests
{
    [Fact]
    public async Task The_first_photo_goes_on_the_card_and_another_can_be_chosen()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        await AreChosenAsync(studio);
    }

    /// <summary>Shared with the tests on PostgreSQL.</summary>
    internal static async Task AreChosenAsync(TestStudio studio)
    {
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Assert.Null(await OnShelfAsync(studio, caller));

        Guid first = await AddAsync(studio, caller, design, "on the line"), second = await AddAsync(studio, caller, design);
        Assert.Equal(first, await OnShelfAsync(studio, caller));
        Assert.Equal([new(first, "on the line", true), new(second, "", false)], await studio.DesignPhotos.ListAsync(caller, design));

        Assert.True((await studio.DesignPhotos.ChooseAsync(caller, design, second)).Succeeded);
        Assert.Equal(second, await OnShelfAsync(studio, caller));
        Assert.True((await studio.DesignPhotos.ChooseAsync(caller, design, null)).Succeeded);
        Assert.Null(await OnShelfAsync(studio, caller));
        Assert.True((await studio.DesignPhotos.SayAsync(caller, design, second, " folded ")).Succeeded);
        Assert.Equal("folded", (await studio.DesignPhotos.ListAsync(caller, design))[1].Caption);
    }

    [Fact]
    public async Task A_removed_photo_makes_way_for_the_oldest_of_the_others_and_can_be_added_again()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid first = await AddAsync(studio, caller, design), second = await AddAsync(studio, caller, design), third = await AddAsync(studio, caller, design);

        Outcome<PreparedPhoto> removed = await studio.DesignPhotos.RemoveAsync(caller, design, first);

        Assert.Equal(second, await OnShelfAsync(studio, caller));
        Assert.Null(await studio.Photos.FindAsync(caller, first, small: false));
        Assert.True((await studio.DesignPhotos.AddAsync(caller, design, removed.Value!)).Succeeded);
        Assert.Equal([second, third], (await studio.DesignPhotos.ListAsync(caller, design)).Take(2).Select(photo => photo.Id));
        foreach (KeptDesignPhoto photo in await studio.DesignPhotos.ListAsync(caller, design)) await studio.DesignPhotos.RemoveAsync(caller, design, photo.Id);
        Assert.Null(await OnShelfAsync(studio, caller));
    }

    [Fact]
    public async Task Nobody_reaches_photos_of_another_studio_or_of_another_design()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync(), stranger = await studio.NewCallerAsync("Drift");
        Guid design = await studio.NewDesignAsync(caller), other = await studio.NewDesignAsync(caller, "Other");
        Guid photo = await AddAsync(studio, caller, design);

        Assert.Empty(await studio.DesignPhotos.ListAsync(stranger, design));
        Assert.False((await studio.DesignPhotos.AddAsync(stranger, design, Picture)).Succeeded);
        Assert.False((await studio.DesignPhotos.RemoveAsync(stranger, design, photo)).Succeeded);
        Assert.False((await studio.DesignPhotos.ChooseAsync(stranger, design, null)).Succeeded);
        Assert.False((await studio.DesignPhotos.ChooseAsync(caller, other, photo)).Succeeded);
        Assert.False((await studio.DesignPhotos.SayAsync(caller, other, photo, "mine")).Succeeded);
        Assert.Null(await studio.Photos.FindAsync(stranger, photo, small: true));
    }

    [Fact]
    public async Task Too_many_photos_and_too_long_captions_are_refused_in_words()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        for (int i = 0; i < DesignPhoto.Most; i++) await AddAsync(studio, caller, design);

        Outcome<Guid> more = await studio.DesignPhotos.AddAsync(caller, design, Picture);
        Outcome longer = await studio.DesignPhotos.SayAsync(caller, design, (await studio.DesignPhotos.ListAsync(caller, design))[0].Id, new string('a', DesignPhoto.CaptionLength + 1));

        Assert.Equal("A design can have 24 photos. Remove one before you add another.", more.ToString());
        Assert.Equal("The caption has 201 characters. Shorten it to 200 or fewer.", longer.ToString());
    }

    internal static PreparedPhoto Picture => PhotoReader.Read(PhotoTests.Jpeg(60, 40)).Value!;

    private static async Task<Guid> AddAsync(TestStudio studio, Caller caller, Guid design, string caption = "")
    {
        Outcome<Guid> added = await studio.DesignPhotos.AddAsync(caller, design, Picture, caption);
        Assert.True(added.Succeeded, added.ToString());
        return added.Value;
    }

    private static async Task<Guid?> OnShelfAsync(TestStudio studio, Caller caller) =>
        Assert.Single((await studio.Library.ListAsync(caller, new())).Designs).PhotoId;
}
