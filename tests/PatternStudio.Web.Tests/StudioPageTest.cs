using System.Security.Claims;
using Bunit;
using Bunit.TestDoubles;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Tests;

/// <summary>For pages that work with a real studio: one on a SQLite file of its own, whose designer is signed in.</summary>
public abstract class StudioPageTest : PageTest
{
    /// <summary>Made once, and copied for each test.</summary>
    private static readonly Lazy<Task<(byte[] Store, Caller Caller)>> Begun = new(BeginAsync);
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("studio-pages-");

    protected StudioPageTest()
    {
        (byte[] store, Caller) = Begun.Value.GetAwaiter().GetResult();
        File.WriteAllBytes(Path.Combine(folder.FullName, "studio.db"), store);
        Services.AddLogging();
        Services.AddStudio(SettingsFor(folder), folder.FullName);
        Services.AddScoped<SignedIn>();
        JSInterop.Mode = JSRuntimeMode.Loose;
        BunitAuthorizationContext account = this.AddAuthorization();
        account.SetAuthorized("mira");
        account.SetClaims(new Claim(ClaimTypes.NameIdentifier, Caller.AccountId.ToString()));
    }

    protected Caller Caller { get; }

    protected DesignDesk Desk => Services.GetRequiredService<DesignDesk>();

    protected DesignLibrary Library => Services.GetRequiredService<DesignLibrary>();

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (!disposing) return;
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    private static IConfiguration SettingsFor(DirectoryInfo at) =>
        new ConfigurationBuilder().AddInMemoryCollection(new Dictionary<string, string?> { ["Store:Folder"] = at.FullName }).Build();

    private static async Task<(byte[] Store, Caller Caller)> BeginAsync()
    {
        DirectoryInfo at = Directory.CreateTempSubdirectory("studio-pages-");
        ServiceCollection services = new();
        services.AddStudio(SettingsFor(at), at.FullName);
        services.Configure<PasswordHasherOptions>(options => options.IterationCount = 1_000);
        await using ServiceProvider studio = services.BuildServiceProvider();
        await studio.MigrateStudioAsync();
        Outcome<Caller> made = await studio.GetRequiredService<StudioSetup>().CreateAsync("Dune & Drift", "mira@example.org", "four grey pebbles", loadSample: false);
        SqliteConnection.ClearAllPools();
        byte[] store = await File.ReadAllBytesAsync(Path.Combine(at.FullName, "studio.db"));
        at.Delete(recursive: true);
        return (store, made.Value!);
    }
}
