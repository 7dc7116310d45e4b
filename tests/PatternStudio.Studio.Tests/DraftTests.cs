using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

/// <summary>Words that are typed and not saved.</summary>
public sealed class DraftTests
{
    private static readonly Guid Desk = new("11111111-0000-4000-8000-000000000000");
    private static readonly Guid OtherDesk = new("22222222-0000-4000-8000-000000000000");

    [Fact]
    public async Task A_draft_is_kept_with_its_time_and_place_and_replaced_by_its_own_writer()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);

        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 2"));
        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 21"));

        DraftWords kept = Assert.Single(await studio.Get<Drafts>().ListAsync(caller, design));
        Assert.Equal(("Ch 21", 1, "phone"), (kept.Text, kept.BasedOn, kept.Place));
        Assert.InRange(kept.At, studio.Clock.GetUtcNow().AddMinutes(-1), studio.Clock.GetUtcNow());
    }

    [Fact]
    public async Task Two_desks_never_write_over_each_other()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);

        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 21"));
        studio.Clock.Advance(TimeSpan.FromMinutes(1));
        await studio.Get<Drafts>().KeepAsync(caller, design, Words(OtherDesk, "Ch 31"));

        Assert.Equal(["Ch 31", "Ch 21"], (await studio.Get<Drafts>().ListAsync(caller, design)).Select(draft => draft.Text));
    }

    [Fact]
    public async Task A_draft_that_was_gone_on_with_goes_unless_its_writer_has_gone_on_too()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 21"));
        DraftWords takenUp = (await studio.Get<Drafts>().ListAsync(caller, design))[0];
        studio.Clock.Advance(TimeSpan.FromMinutes(1));

        await studio.Get<Drafts>().KeepAsync(caller, design, Words(OtherDesk, "Ch 21, turn"), takenUp);
        Assert.Equal(["Ch 21, turn"], (await studio.Get<Drafts>().ListAsync(caller, design)).Select(draft => draft.Text));

        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 22"));
        await studio.Get<Drafts>().ForgetAsync(caller, design, OtherDesk, takenUp);
        Assert.Equal(["Ch 22"], (await studio.Get<Drafts>().ListAsync(caller, design)).Select(draft => draft.Text));
    }

    [Fact]
    public async Task Nobody_else_sees_a_draft()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 21"));
        Caller stranger = await studio.NewCallerAsync("Other");

        Assert.Empty(await studio.Get<Drafts>().ListAsync(stranger, design));
        Assert.False((await studio.Get<Drafts>().KeepAsync(stranger, design, Words(OtherDesk, "Ch 3"))).Succeeded);
        await studio.Get<Drafts>().ForgetAsync(stranger, design, Desk);
        Assert.Single(await studio.Get<Drafts>().ListAsync(caller, design));
    }

    [Fact]
    public async Task A_draft_that_nobody_came_back_to_is_dropped_after_ninety_days()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Get<Drafts>().KeepAsync(caller, design, Words(Desk, "Ch 21"));
        studio.Clock.Advance(TimeSpan.FromDays(91));
        await studio.Get<Drafts>().KeepAsync(caller, design, Words(OtherDesk, "Ch 31"));

        Assert.Equal(["Ch 31"], (await studio.Get<Drafts>().ListAsync(caller, design)).Select(draft => draft.Text));
    }

    [Fact]
    public async Task Open_desks_are_told_of_a_save_until_they_close()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        var heard = new List<SavedElsewhere>();
        using (studio.Get<SavedNews>().Listen(design, heard.Add))
        {
            await studio.Desk.SaveAsync(caller, design, "Ch 21.", 1);
            await studio.Desk.SaveAsync(caller, design, "Ch 21.", 2); // the same words: nothing new
        }

        await studio.Desk.SaveAsync(caller, design, "Ch 31.", 2);

        SavedElsewhere told = Assert.Single(heard);
        Assert.Equal((design, 2, "Ch 21."), (told.DesignId, told.Version, told.Text));
        Assert.Contains("@example.com", told.SavedBy, StringComparison.Ordinal);
    }

    private static DraftWords Words(Guid writer, string text) => new(writer, text, 1, default, "phone");
}
