using PatternStudio.Studio.Accounts;

namespace PatternStudio.Studio.Tests;

public sealed class PreferenceTests
{
    [Fact]
    public async Task Preferences_are_kept_with_the_account_and_nobody_elses_change()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller one = await studio.NewCallerAsync(), other = await studio.NewCallerAsync();
        var book = studio.Get<PreferenceBook>();
        var wanted = new Preferences { Lengths = LengthUnit.Inches, Decimals = DecimalSign.Comma, Dates = DateForm.Dotted, LeftHanded = true, TourDone = true };

        await book.KeepAsync(one, new Preferences { TourDone = true });
        Assert.True((await book.KeepAsync(one, wanted)).Succeeded);

        Assert.Equal(wanted, await book.OfAsync(one.AccountId));
        Assert.Equal(new Preferences(), await book.OfAsync(other.AccountId));
    }

    [Fact]
    public async Task Who_is_no_member_keeps_nothing()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();

        Assert.False((await studio.Get<PreferenceBook>().KeepAsync(caller with { StudioId = Guid.NewGuid() }, new Preferences { LeftHanded = true })).Succeeded);

        Assert.False((await studio.Get<PreferenceBook>().OfAsync(caller.AccountId)).LeftHanded);
    }
}
