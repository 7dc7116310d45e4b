using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Tests;

/// <summary>Many designs: found again, tagged, moved, copied, deleted and brought back.</summary>
public sealed class ShelfTests
{
    [Fact]
    public async Task Words_are_found_in_title_pattern_and_tags_and_all_must_occur()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid cloth = await studio.NewDesignAsync(caller, "Wrack Line Cloth", Texts.Cloth);
        Guid scarf = await studio.NewDesignAsync(caller, "Éclair Scarf", "Puff st in Över each st");
        await studio.Tags.PutAsync(caller, "Spring book", [cloth]);

        Assert.Equal([cloth], await FoundAsync("hook ACROSS"));
        Assert.Equal([cloth], await FoundAsync("spring cloth"));
        Assert.Equal([scarf], await FoundAsync("över scarf"));
        Assert.Equal([cloth], await FoundAsync("\"ch from hook\""));
        Assert.Empty(await FoundAsync("\"hook from ch\""));
        Assert.Empty(await FoundAsync("puff cloth"));

        async Task<IEnumerable<Guid>> FoundAsync(string search) =>
            (await studio.Library.ListAsync(caller, new(search))).Designs.Select(line => line.Id);
    }

    [Fact]
    public async Task A_saved_text_is_found_and_the_old_one_is_not()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller, text: "Ch 21. Marram");
        await studio.Desk.SaveAsync(caller, id, "Ch 21. Samphire", 1);

        Assert.Equal(0, (await studio.Library.ListAsync(caller, new("marram"))).Total);
        Assert.Equal(1, (await studio.Library.ListAsync(caller, new("samphire"))).Total);
    }

    [Fact]
    public async Task Tag_findings_and_state_narrow_the_list_and_states_are_counted_beside()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid right = await studio.NewDesignAsync(caller, "Right");
        Guid wrong = await studio.NewDesignAsync(caller, "Wrong", Texts.WrongCloth);
        Guid tag = (await studio.Tags.PutAsync(caller, "fair", [right, wrong])).Value;
        await studio.Batch.MoveToAsync(caller, [wrong], DesignState.Testing);

        DesignPage tagged = await studio.Library.ListAsync(caller, new(State: DesignState.Idea) { Tag = tag });
        DesignPage found = await studio.Library.ListAsync(caller, new() { WithFindings = true });

        Assert.Equal([right], tagged.Designs.Select(line => line.Id));
        Assert.Equal((1, 1), (tagged.ByState[DesignState.Idea], tagged.ByState[DesignState.Testing]));
        Assert.Equal([wrong], found.Designs.Select(line => line.Id));
        Assert.Equal(["fair"], found.Designs[0].Tags);
    }

    [Fact]
    public async Task Tags_differ_by_more_than_case_are_renamed_and_removed()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        Guid baby = (await studio.Tags.PutAsync(caller, " Baby  gifts ", [id])).Value;
        Assert.Equal(baby, (await studio.Tags.PutAsync(caller, "baby GIFTS", [id])).Value);
        Guid other = (await studio.Tags.PutAsync(caller, "Éire", [])).Value;

        Assert.False((await studio.Tags.RenameAsync(caller, other, "BABY gifts")).Succeeded);
        Assert.True((await studio.Tags.RenameAsync(caller, baby, "Presents")).Succeeded);
        Assert.Equal([new KeptTag(baby, "Presents", 1), new KeptTag(other, "Éire", 0)], await studio.Tags.ListAsync(caller));
        Assert.True((await studio.Tags.TakeAsync(caller, baby, [id])).Succeeded);
        Assert.True((await studio.Tags.RemoveAsync(caller, other)).Succeeded);
        Assert.Equal([new KeptTag(baby, "Presents", 0)], await studio.Tags.ListAsync(caller));
    }

    [Fact]
    public async Task Tags_and_designs_of_another_studio_are_not_touched()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Caller stranger = await studio.NewCallerAsync("Drift");
        Guid id = await studio.NewDesignAsync(caller);
        Guid tag = (await studio.Tags.PutAsync(caller, "fair", [id])).Value;

        Assert.True((await studio.Tags.PutAsync(stranger, "mine", [id])).Succeeded);
        Assert.False((await studio.Tags.RenameAsync(stranger, tag, "theirs")).Succeeded);
        Assert.False((await studio.Tags.RemoveAsync(stranger, tag)).Succeeded);
        Assert.Empty(await studio.Batch.DeleteAsync(stranger, [id]));
        Assert.Empty(await studio.Batch.MoveToAsync(stranger, [id], DesignState.Published));
        Assert.False((await studio.Copies.CopyAsync(stranger, id, "Copy")).Succeeded);
        Assert.Null(await studio.Get<DesignPictures>().FindAsync(stranger, id));
        Assert.Equal(["fair"], Assert.Single((await studio.Library.ListAsync(caller, new())).Designs).Tags);
    }

    [Fact]
    public async Task Many_are_moved_deleted_and_brought_back_at_once()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid[] ids = [await studio.NewDesignAsync(caller, "One"), await studio.NewDesignAsync(caller, "Two"), await studio.NewDesignAsync(caller, "Three")];
        await studio.Desk.MoveToAsync(caller, ids[0], DesignState.Published);

        IReadOnlyDictionary<Guid, DesignState> before = await studio.Batch.MoveToAsync(caller, ids, DesignState.Testing);
        Assert.Equal(3, (await studio.Library.ListAsync(caller, new(State: DesignState.Testing))).Total);
        await studio.Batch.MoveToAsync(caller, before);
        Assert.Equal([ids[0]], await studio.Library.IdsAsync(caller, new(State: DesignState.Published)));

        Assert.Equal(2, (await studio.Batch.DeleteAsync(caller, [ids[1], ids[2], Guid.NewGuid()])).Count);
        Assert.Equal(1, (await studio.Library.ListAsync(caller, new())).Total);
        DesignPage deleted = await studio.Library.ListAsync(caller, new(Order: DesignOrder.Title) { Deleted = true });
        Assert.Equal(["Two", "Three"], deleted.Designs.Select(line => line.Title));
        Assert.All(deleted.Designs, line => Assert.NotNull(line.Deleted));
        Assert.Equal(2, await studio.Batch.RestoreAsync(caller, ids));
        Assert.Equal(3, (await studio.Library.ListAsync(caller, new())).Total);
    }

    [Fact]
    public async Task A_copy_keeps_words_swatches_photos_yarn_and_tags_and_goes_its_own_way()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        await studio.Yarns.ChooseAsync(caller, id, yarn);
        PreparedPhoto photo = PhotoReader.Read(PhotoTests.Jpeg(60, 40)).Value!;
        await studio.Swatches.AddAsync(caller, id, Texts.Swatch with { YarnId = yarn }, photo);
        await studio.Tags.PutAsync(caller, "cloths", [id]);

        Guid copy = (await studio.Copies.CopyAsync(caller, id, "Wrack Line Blanket")).Value;

        OpenDesign open = (await studio.Desk.OpenAsync(caller, copy))!, first = (await studio.Desk.OpenAsync(caller, id))!;
        Assert.Equal((Texts.Cloth, 1, DesignState.Idea, yarn), (open.Text, open.Version, open.State, open.YarnId!.Value));
        Assert.Equivalent(first.Results, open.Results, strict: true);
        Assert.NotEqual(first.SwatchId, open.SwatchId);
        KeptSwatch kept = Assert.Single(await studio.Swatches.ListAsync(caller, copy));
        Assert.Equal(Texts.Swatch with { YarnId = yarn }, kept.Details);
        Assert.True((await studio.Swatches.RemoveAsync(caller, (await studio.Swatches.ListAsync(caller, id))[0].Id)).Succeeded);
        Assert.Equal(photo.Picture, await studio.Photos.FindAsync(caller, kept.PhotoId!.Value, small: false));
        Assert.Equal(["cloths"], (await studio.Library.ListAsync(caller, new("blanket"))).Designs[0].Tags);
    }

    [Fact]
    public async Task The_small_chart_is_stored_drawn_anew_with_other_words_and_not_with_another_swatch()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid id = await studio.NewDesignAsync(caller);
        byte[] first = (await PictureAsync())!;
        Assert.Equal("PNG"u8.ToArray(), first[1..4]);

        await using (var context = studio.Context())
            await context.Faces.ExecuteUpdateAsync(set => set.SetProperty(face => face.Picture, new byte[] { 1, 2, 3 }));
        await studio.Swatches.AddAsync(caller, id, Texts.Swatch);
        Assert.Equal([1, 2, 3], (await PictureAsync())!);
        await studio.Desk.SaveAsync(caller, id, Texts.Cloth + "\nRow 3: Ch 1, turn, dc in each st across.", 1);
        Assert.True((await PictureAsync())!.Length > 100);
        await studio.Desk.SaveAsync(caller, id, "Nothing to draw.", 2);
        Assert.Null(await PictureAsync());

        Task<byte[]?> PictureAsync() => studio.Get<DesignPictures>().FindAsync(caller, id);
    }

    /// <summary>By the order of the words beside <see cref="Waiting.Of"/>.</summary>
    [Theory]
    [InlineData(DesignState.Idea, 0, 0, 0, 0, false, WaitsFor.FirstRow)]
    [InlineData(DesignState.Writing, 8, 8, 2, 1, true, WaitsFor.Mending)]
    [InlineData(DesignState.Writing, 8, 8, 0, 1, true, WaitsFor.Looking)]
    [InlineData(DesignState.Testing, 8, 7, 0, 0, true, WaitsFor.Looking)]
    [InlineData(DesignState.Writing, 8, 8, 0, 0, false, WaitsFor.Swatch)]
    [InlineData(DesignState.Writing, 8, 8, 0, 0, true, WaitsFor.Testers)]
    [InlineData(DesignState.Testing, 8, 8, 0, 0, false, WaitsFor.Testing)]
    [InlineData(DesignState.Published, 8, 8, 0, 0, false, WaitsFor.Nothing)]
    [InlineData(DesignState.Published, 8, 8, 1, 0, false, WaitsFor.Mending)]
    public void What_a_design_waits_for_follows_from_its_state_and_its_results(
        DesignState state, int rows, int checkedRows, int errors, int warnings, bool swatch, WaitsFor waits) =>
        Assert.Equal(waits, Waiting.Of(new(Guid.Empty, "", state, 1, rows, checkedRows, errors, warnings, null, null, default) { HasSwatch = swatch }));
}
