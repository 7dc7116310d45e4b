using Microsoft.Playwright;

namespace PatternStudio.EndToEnd;

/// <summary>
/// The browser of the machine. Where there is none the tests are skipped and say so;
/// PATTERNSTUDIO_REQUIRE_BROWSER=1 makes that a failure, so that a build server can't pass without looking.
/// </summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
    private IPlaywright? playwright;
    private IBrowser? browser;

    private static string? Program =>
        Environment.GetEnvironmentVariable("PATTERNSTUDIO_BROWSER") ?? Places.FirstOrDefault(File.Exists);

    private static bool Required => Environment.GetEnvironmentVariable("PATTERNSTUDIO_REQUIRE_BROWSER") == "1";

    public async ValueTask InitializeAsync()
    {
        if (Program is null) return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Program,
            Args = ["--no-sandbox", "--disable-gpu"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
    }

    /// <summary>False where the machine has none.</summary>
    public bool IsThere => browser is not null;

    /// <summary>A new window.</summary>
    /// <param name="remembered">Cookies and storage to begin with; null for a window with nothing remembered.</param>
    public async Task<IBrowserContext> OpenAsync(int width = 1440, int height = 900, bool dark = false, bool scripts = true, string? remembered = null)
    {
        const string Missing = "NO BROWSER: install chromium (apt-get install chromium) or name one in PATTERNSTUDIO_BROWSER.";
        if (browser is null && Required) Assert.Fail(Missing);
        if (browser is null) Assert.Skip(Missing);
        IBrowserContext window = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            IsMobile = width < 600,
            HasTouch = width < 600,
            JavaScriptEnabled = scripts,
            StorageState = remembered,
            ReducedMotion = ReducedMotion.Reduce,
        });
        // Generous: a loaded machine is slow, and no test here is about time.
        window.SetDefaultTimeout(120_000);
        Assertions.SetDefaultExpectTimeout(120_000);
        return window;
    }
}
