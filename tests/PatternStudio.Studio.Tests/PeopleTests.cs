using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Studio.Tests;

/// <summary>What people are called.</summary>
public sealed class PeopleTests
{
    [Fact]
    public async Task A_name_stands_in_place_of_the_e_mail_address_for_what_was_saved_before_too()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        People people = studio.Get<People>();
        Assert.Contains("@example.com", await SavedByAsync(studio, caller, design), StringComparison.Ordinal);
        Assert.Equal("", await people.NameOfAsync(caller));

        Assert.True((await people.CallAsync(caller, "  Mira Holm ")).Succeeded);

        Assert.Equal("Mira Holm", await people.NameOfAsync(caller));
        Assert.Equal("Mira Holm", await SavedByAsync(studio, caller, design));
        Assert.Equal("Mira Holm", (await studio.Versions.FindAsync(caller, design, 1))!.SavedBy);
        Assert.True((await people.CallAsync(caller, "")).Succeeded);
        Assert.Contains("@example.com", await SavedByAsync(studio, caller, design), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Open_desks_and_those_who_save_at_once_hear_the_name()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Get<People>().CallAsync(caller, "Mira");
        var heard = new List<string>();
        using IDisposable listening = studio.Get<SavedNews>().Listen(design, saved => heard.Add(saved.SavedBy));

        await studio.Desk.SaveAsync(caller, design, "Ch 9.", 1);
        SaveOutcome late = await studio.Desk.SaveAsync(caller, design, "Ch 10.", 1);

        Assert.Equal(["Mira"], heard);
        Assert.Equal("Mira", Assert.IsType<Conflict>(late).SavedBy);
    }

    [Fact]
    public async Task A_name_that_is_too_long_or_can_not_be_kept_is_told()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();

        Assert.Equal("Your name has 81 characters. Shorten it to 80 or fewer.", (await studio.Get<People>().CallAsync(caller, new string('m', 81))).ToString());
        Assert.Contains("can't be kept", (await studio.Get<People>().CallAsync(caller, "Mi\0ra")).ToString(), StringComparison.Ordinal);
        Assert.False((await studio.Get<People>().CallAsync(caller with { StudioId = Guid.NewGuid() }, "Mira")).Succeeded);
    }

    private static async Task<string> SavedByAsync(TestStudio studio, Caller caller, Guid design) =>
        Assert.Single(await studio.Versions.ListAsync(caller, design)).SavedBy;
}
