using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>The program as it is on the first day: nobody has set it up.</summary>
public sealed class EmptyStudio(FurnishedStudio furnished) : IAsyncLifetime
{
    private StudioProgram? program;

    public Uri Address => program!.Address;

    public async ValueTask InitializeAsync() => program = await StudioProgram.StartAsync();

    public async ValueTask DisposeAsync()
    {
        if (program is not null) await program.DisposeAsync();
    }

    /// <summary>A page in a new window, as somebody who has not come before sees it.</summary>
    public async Task<IPage> KnockAsync(int width, int height, bool dark)
    {
        IBrowserContext window = await furnished.Browser.OpenAsync(width, height, dark);
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(Address.ToString());
        return page;
    }
}
