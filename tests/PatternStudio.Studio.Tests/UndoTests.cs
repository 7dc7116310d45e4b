using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Tags;
using SkiaSharp;

namespace PatternStudio.Studio.Tests;

/// <summary>What was removed can be had back as it was.</summary>
public sealed class UndoTests
{
    [Fact]
    public async Task A_swatch_comes_back_with_its_photo_and_the_design_has_its_numbers_again()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        PreparedPhoto photo = PhotoReader.Read(Jpeg()).Value!;
        Guid swatch = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch, photo)).Value;
        Results before = (await studio.Desk.OpenAsync(caller, design))!.Results;

        RemovedSwatch removed = (await studio.Swatches.RemoveAsync(caller, swatch)).Value!;
        Assert.True((await studio.Swatches.PutBackAsync(caller, removed)).Succeeded);

        KeptSwatch back = Assert.Single(await studio.Swatches.ListAsync(caller, design));
        Assert.Equal((Texts.Swatch, true), (back.Details, back.Chosen));
        Assert.Equal(photo.Picture, await studio.Photos.FindAsync(caller, back.PhotoId!.Value, small: false));
        Assert.Equivalent(before, (await studio.Desk.OpenAsync(caller, design))!.Results, strict: true);
    }

    [Fact]
    public async Task A_swatch_that_comes_back_leaves_the_one_that_was_chosen_since()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid first = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch)).Value;
        Guid second = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch with { WidthCm = 14 })).Value;

        RemovedSwatch removed = (await studio.Swatches.RemoveAsync(caller, first)).Value!;
        await studio.Swatches.ChooseAsync(caller, design, second);
        await studio.Swatches.PutBackAsync(caller, removed);

        Assert.Equal(second, Assert.Single(await studio.Swatches.ListAsync(caller, design), swatch => swatch.Chosen).Id);
        Assert.Equal(2, (await studio.Swatches.ListAsync(caller, design)).Count);
    }

    [Fact]
    public async Task A_lot_comes_back_with_what_was_set_aside_of_it_by_a_deleted_design_too()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        var details = new LotDetails(yarn, 3, 20, "7", "shelf", "");
        Guid lot = (await studio.Stash.AddAsync(caller, details)).Value;
        Guid design = await studio.NewDesignAsync(caller), deleted = await studio.NewDesignAsync(caller, "Given up");
        await studio.Stash.ReserveAsync(caller, design, lot, 60);
        await studio.Stash.ReserveAsync(caller, deleted, lot, 30);
        await studio.Desk.DeleteAsync(caller, deleted);

        RemovedLot removed = (await studio.Stash.RemoveAsync(caller, lot)).Value!;
        Assert.Empty(await studio.Stash.ListAsync(caller));
        Assert.False((await studio.Stash.PutBackAsync(await studio.NewCallerAsync("Drift"), removed)).Succeeded);
        Assert.True((await studio.Stash.PutBackAsync(caller, removed)).Succeeded);
        await studio.Desk.RestoreAsync(caller, deleted);

        KeptLot back = Assert.Single(await studio.Stash.ListAsync(caller));
        Assert.Equal((details, 60, 30), (back.Details, back.ReservedBy(design), back.ReservedBy(deleted)));
    }

    [Fact]
    public async Task A_tag_comes_back_on_the_designs_that_bore_it()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid one = await studio.NewDesignAsync(caller), other = await studio.NewDesignAsync(caller, "Other");
        Guid tag = (await studio.Tags.PutAsync(caller, "spring book", [one, other])).Value;
        await studio.NewDesignAsync(caller, "Bare");

        RemovedTag removed = (await studio.Tags.RemoveAsync(caller, tag)).Value!;
        await studio.Tags.PutAsync(caller, removed.Name, removed.Designs);

        KeptTag back = Assert.Single(await studio.Tags.ListAsync(caller));
        Assert.Equal(("spring book", 2), (back.Name, back.Designs));
    }

    private static byte[] Jpeg()
    {
        using var picture = new SKBitmap(60, 40);
        picture.Erase(SKColors.Olive);
        using SKData data = picture.Encode(SKEncodedImageFormat.Jpeg, 90);
        return data.ToArray();
    }
}
