using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Studio.Tests;

public sealed class SetupTests
{
    [Fact]
    public async Task Setup_is_needed_until_the_first_account_is_there()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Assert.True(await studio.Setup.IsNeededAsync());

        await studio.NewCallerAsync();

        Assert.False(await studio.Setup.IsNeededAsync());
    }

    [Fact]
    public async Task Setup_makes_an_account_that_can_sign_in_and_is_a_member_of_the_studio()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();

        Outcome<Caller> created = await studio.Setup.CreateAsync("  Dune & Drift ", " mara@example.com ", TestStudio.Password, false);

        Assert.Equal("Dune & Drift", await studio.Memberships.StudioNameAsync(created.Value!));
        Assert.Equal(created.Value, await studio.Memberships.CallerAsync(created.Value!.AccountId));
        using IServiceScope scope = studio.Scope();
        var accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        Account? account = await accounts.FindByEmailAsync("MARA@example.com");
        Assert.NotNull(account);
        Assert.True(await accounts.CheckPasswordAsync(account, TestStudio.Password));
        Assert.False(await accounts.CheckPasswordAsync(account, "something else"));
    }

    [Theory]
    [InlineData("", "mara@example.com", "four grey pebbles", "studioName", "The studio needs a name. Enter one.")]
    [InlineData("Dune", "", "four grey pebbles", "email", "Enter the e-mail address that you will sign in with.")]
    [InlineData("Dune", "mara", "four grey pebbles", "email", "This is not a whole e-mail address. Enter one like name@example.com.")]
    [InlineData("Dune", "Mara <mara@example.com>", "four grey pebbles", "email", "This is not a whole e-mail address. Enter one like name@example.com.")]
    [InlineData("Dune", "mara@example.com", "pebbles", "password", "The password is too short. Use at least 10 characters; a few words together are fine.")]
    [InlineData("Dune", "mara@example.com", "aaaaaaaaaaaa", "password", "The password repeats the same few characters. Use at least 4 different ones.")]
    public async Task Wrong_input_is_told_at_its_field_and_nothing_is_made(
        string name, string email, string password, string field, string message)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();

        Outcome<Caller> refused = await studio.Setup.CreateAsync(name, email, password, false);

        Assert.Equal([new FieldMessage(field, message)], refused.Messages);
        Assert.True(await studio.Setup.IsNeededAsync());
    }

    [Fact]
    public async Task All_that_is_wrong_is_told_at_once()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();

        Outcome<Caller> refused = await studio.Setup.CreateAsync("\0", "mara", "", false);

        Assert.Equal(["studioName", "email", "password"], refused.Messages.Select(message => message.Field));
    }

    [Fact]
    public async Task An_address_is_taken_once_whatever_its_case()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        await studio.Setup.CreateAsync("Dune", "mara@example.com", TestStudio.Password, false);

        Outcome<Caller> refused = await studio.Setup.CreateAsync("Drift", "Mara@Example.com", TestStudio.Password, false);

        FieldMessage only = Assert.Single(refused.Messages);
        Assert.Equal("email", only.Field);
        Assert.StartsWith("There is an account with this e-mail address already.", only.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_server_that_is_not_open_to_all_is_set_up_once()
    {
        string folder = TestStudio.NewFolder();
        await using TestStudio studio = await TestStudio.OpenAsync(folder, true, new() { ["Studio:OpenToAll"] = "false" });
        await studio.NewCallerAsync();

        Outcome<Caller> refused = await studio.Setup.CreateAsync("Drift", "other@example.com", TestStudio.Password, false);

        Assert.Equal("This studio is already set up. Sign in instead.", refused.ToString());
    }

    [Fact]
    public async Task Of_two_first_setups_at_the_same_moment_one_is_refused()
    {
        string folder = TestStudio.NewFolder();
        await using TestStudio studio = await TestStudio.OpenAsync(folder, true, new() { ["Studio:OpenToAll"] = "false" });

        Outcome<Caller>[] both = await Task.WhenAll(
            Task.Run(() => studio.Setup.CreateAsync("Dune", "mara@example.com", TestStudio.Password, false)),
            Task.Run(() => studio.Setup.CreateAsync("Drift", "finn@example.com", TestStudio.Password, false)));

        Assert.Single(both, outcome => outcome.Succeeded);
    }

    [Fact]
    public async Task A_stranger_has_no_studio()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Assert.Null(await studio.Memberships.CallerAsync(Guid.NewGuid()));
    }
}
