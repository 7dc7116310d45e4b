using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(PatternStudio.EndToEnd.FurnishedStudio))]

namespace PatternStudio.EndToEnd;

/// <summary>
/// A studio that was set up once, with its samples and its designer signed in, and then closed. Working the samples takes longer than most tests,
/// so the others begin with a copy of this one's data instead of setting up their own.
/// </summary>
public sealed class FurnishedStudio : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("furnished-");

    /// <summary>One browser for all; every window of it begins with nothing remembered.</summary>
    public Browser Browser { get; } = new();

    /// <summary>What a window of the designer remembers: that she signed in.</summary>
    public string SignedIn { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        await Browser.InitializeAsync();
        if (!Browser.IsThere) return;
        await using StudioProgram program = await StudioProgram.StartAsync();
        IBrowserContext window = await Browser.OpenAsync();
        IPage page = await window.NewPageAsync();
        await page.GotoAsync(program.Address.ToString());
        await OpenStudio.SetUpAsync(page);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Designs", Exact = true })).ToBeVisibleAsync();
        SignedIn = await window.StorageStateAsync();
        await window.CloseAsync();
        await program.StopAsync();
        CopyAll(program.Store, folder.FullName);
    }

    /// <summary>Puts the furniture into another studio's folder.</summary>
    public void CopyTo(string store) => CopyAll(folder.FullName, store);

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        folder.Delete(recursive: true);
    }

    private static void CopyAll(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (string file in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
