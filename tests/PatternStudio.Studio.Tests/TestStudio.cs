using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Tests;

/// <summary>The studio on a real store: a SQLite file in a folder of its own, or a database of its own on a PostgreSQL server.</summary>
public sealed class TestStudio : IAsyncDisposable
{
    public const string Password = "four grey pebbles";
    private static readonly Lazy<Task<byte[]>> EmptyStore = new(MakeEmptyStoreAsync);
    private readonly ServiceProvider services;
    private readonly bool ownsFolder;

    private TestStudio(ServiceProvider services, string folder, bool ownsFolder) =>
        (this.services, Folder, this.ownsFolder) = (services, folder, ownsFolder);

    public string Folder { get; }

    public ManualClock Clock => (ManualClock)Get<TimeProvider>();

    public QueryCount Queries => Get<QueryCount>();

    public StudioSetup Setup => Get<StudioSetup>();

    public Memberships Memberships => Get<Memberships>();

    public DesignLibrary Library => Get<DesignLibrary>();

    public DesignDesk Desk => Get<DesignDesk>();

    public DesignBatch Batch => Get<DesignBatch>();

    public DesignCopies Copies => Get<DesignCopies>();

    public DesignPhotos DesignPhotos => Get<DesignPhotos>();

    public DesignTags Tags => Get<DesignTags>();

    public DesignVersions Versions => Get<DesignVersions>();

    public Swatches Swatches => Get<Swatches>();

    public Yarns Yarns => Get<Yarns>();

    public Photos Photos => Get<Photos>();

    public Stash Stash => Get<Stash>();

    public StashDesigns StashDesigns => Get<StashDesigns>();

    /// <summary>Opens a studio on SQLite; in a new folder unless one is given.</summary>
    public static async Task<TestStudio> OpenAsync(string? folder = null)
    {
        string at = folder ?? await FreshFolderAsync();
        return await OpenAsync(at, folder is null, new() { ["Store:Folder"] = "kept" });
    }

    /// <summary>Opens a studio on whatever the settings say.</summary>
    public static async Task<TestStudio> OpenAsync(string folder, bool ownsFolder, Dictionary<string, string?> settings)
    {
        settings.TryAdd("Studio:OpenToAll", "true");
        IConfiguration configuration = new ConfigurationBuilder().AddInMemoryCollection(settings).Build();
        var services = new ServiceCollection();
        services.AddSingleton<TimeProvider>(new ManualClock());
        services.AddSingleton<QueryCount>();
        services.AddStudio(configuration, folder);
        // Quick to check, and too weak for anything but tests.
        services.Configure<PasswordHasherOptions>(options => options.IterationCount = 1_000);
        services.ConfigureDbContext<SqliteStudioDbContext>(Count);
        services.ConfigureDbContext<PostgresStudioDbContext>(Count);
        var studio = new TestStudio(services.BuildServiceProvider(validateScopes: true), folder, ownsFolder);
        await studio.services.MigrateStudioAsync();
        return studio;

        static void Count(IServiceProvider provider, DbContextOptionsBuilder options) =>
            options.AddInterceptors(provider.GetRequiredService<QueryCount>());
    }

    public T Get<T>() where T : notnull => services.GetRequiredService<T>();

    public IServiceScope Scope() => services.CreateScope();

    public StudioDbContext Context() => Get<IDbContextFactory<StudioDbContext>>().CreateDbContext();

    /// <summary>A new studio with a new account.</summary>
    public async Task<Caller> NewCallerAsync(string name = "Dune & Drift", bool sample = false)
    {
        Outcome<Caller> created = await Setup.CreateAsync(name, $"{Guid.NewGuid():N}@example.com", Password, sample);
        Assert.True(created.Succeeded, created.ToString());
        return created.Value!;
    }

    public async Task<Guid> NewDesignAsync(Caller caller, string title = "Wrack Line Cloth", string text = Texts.Cloth)
    {
        Outcome<Guid> created = await Desk.CreateAsync(caller, title, text);
        Assert.True(created.Succeeded, created.ToString());
        return created.Value;
    }

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        SqliteConnection.ClearAllPools();
        if (ownsFolder) Directory.Delete(Folder, recursive: true);
    }

    /// <summary>A folder with an empty store in it. Migrating costs a quarter of a second: it is done once, and copied.</summary>
    private static async Task<string> FreshFolderAsync()
    {
        string folder = NewFolder();
        string kept = Directory.CreateDirectory(Path.Combine(folder, "kept")).FullName;
        await File.WriteAllBytesAsync(Path.Combine(kept, "studio.db"), await EmptyStore.Value);
        return folder;
    }

    private static async Task<byte[]> MakeEmptyStoreAsync()
    {
        string folder = NewFolder();
        await using TestStudio studio = await OpenAsync(folder, true, new() { ["Store:Folder"] = "kept" });
        await using StudioDbContext context = studio.Context();
        await context.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)");
        return await File.ReadAllBytesAsync(Path.Combine(folder, "kept", "studio.db"));
    }

    public static string NewFolder() => Directory.CreateTempSubdirectory("studio-").FullName;
}
