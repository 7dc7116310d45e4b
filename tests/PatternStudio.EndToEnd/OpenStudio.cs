using Microsoft.Playwright;
using Xunit.Sdk;

namespace PatternStudio.EndToEnd;

/// <summary>A furnished studio of its own for the tests of a class, and a browser to look at it.</summary>
public sealed class OpenStudio(FurnishedStudio furnished) : IAsyncLifetime
{
    public const string Email = "mira@example.org";
    public const string Password = "a hook, a yarn, a chair";
    private readonly List<(ITest? Of, IBrowserContext Window)> windows = [];
    private StudioProgram? program;

    public Uri Address => program!.Address;

    /// <summary>Where the studio keeps its data.</summary>
    public string Store => program!.Store;

    public async ValueTask InitializeAsync() => program = await StudioProgram.StartAsync(furnished.CopyTo);

    public async ValueTask DisposeAsync()
    {
        await CloseAsync(_ => true);
        if (program is not null) await program.DisposeAsync();
    }

    /// <summary>A page in a new window, as somebody who has not come before sees it.</summary>
    public Task<IPage> KnockAsync(int width = 1440, int height = 900, bool dark = false) => VisitAsync(Address.ToString(), width, height, dark);

    /// <summary>An address in a new window of somebody who has no account.</summary>
    /// <param name="scripts">False for a browser that runs none.</param>
    public async Task<IPage> VisitAsync(string address, int width, int height, bool dark = false, bool scripts = true)
    {
        IBrowserContext window = await OpenWindowAsync(() => furnished.Browser.OpenAsync(width, height, dark, scripts));
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(address);
        return page;
    }

    /// <summary>A page in a new window of the designer, who signed in before.</summary>
    public async Task<IPage> EnterAsync(int width = 1440, int height = 900, bool dark = false)
    {
        IBrowserContext window = await OpenWindowAsync(() => furnished.Browser.OpenAsync(width, height, dark, remembered: furnished.SignedIn));
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(Address.ToString());
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Designs", Exact = true })).ToBeVisibleAsync();
        return page;
    }

    /// <summary>The windows of a test that is over go on drawing and asking: they are closed when the next one begins.</summary>
    private async Task<IBrowserContext> OpenWindowAsync(Func<Task<IBrowserContext>> open)
    {
        ITest? now = TestContext.Current.Test;
        await CloseAsync(of => of != now);
        IBrowserContext window = await open();
        windows.Add((now, window));
        return window;
    }

    private async Task CloseAsync(Func<ITest?, bool> those)
    {
        foreach (var (_, window) in windows.Where(it => those(it.Of))) await window.CloseAsync();
        windows.RemoveAll(it => those(it.Of));
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
