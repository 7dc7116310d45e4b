using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>A studio that was set up with its samples, and a browser to look at it.</summary>
public sealed class OpenStudio : IAsyncLifetime
{
    public const string Email = "mira@example.org";
    public const string Password = "a hook, a yarn, a chair";
    private readonly Browser browser = new();
    private StudioProgram? program;

    public Uri Address => program!.Address;

    /// <summary>Where the studio keeps its data.</summary>
    public string Store => program!.Store;

    public async ValueTask InitializeAsync()
    {
        await browser.InitializeAsync();
        program = await StudioProgram.StartAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (program is not null) await program.DisposeAsync();
        await browser.DisposeAsync();
    }

    /// <summary>A page in a new window, as somebody who has not come before sees it.</summary>
    public async Task<IPage> KnockAsync(int width = 1440, int height = 900, bool dark = false)
    {
        IBrowserContext window = await browser.OpenAsync(width, height, dark);
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(Address.ToString());
        return page;
    }

    /// <summary>An address in a new window of somebody who has no account.</summary>
    /// <param name="scripts">False for a browser that runs none.</param>
    public async Task<IPage> VisitAsync(string address, int width, int height, bool dark = false, bool scripts = true)
    {
        IBrowserContext window = await browser.OpenAsync(width, height, dark, scripts);
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(address);
        return page;
    }

    /// <summary>A page in a new window, signed in; sets the studio up where nobody has.</summary>
    public async Task<IPage> EnterAsync(int width = 1440, int height = 900, bool dark = false)
    {
        IPage page = await KnockAsync(width, height, dark);
        if (page.Url.Contains("set-up", StringComparison.Ordinal)) await SetUpAsync(page);
        else await SignInAsync(page);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Designs", Exact = true })).ToBeVisibleAsync();
        return page;
    }

    public static async Task SetUpAsync(IPage page)
    {
        await page.GetByLabel("Name of your studio").FillAsync("Alder & Skein");
        await page.GetByLabel("Your e-mail address").FillAsync(Email);
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the studio" }).ClickAsync();
    }

    public static async Task SignInAsync(IPage page)
    {
        await page.GetByLabel("Your e-mail address").FillAsync(Email);
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
    }
}
