using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace PatternStudio.Studio.Data;

/// <summary>Registers the store and brings it up to date.</summary>
internal static class StoreExtensions
{
    /// <summary>Registers both kinds; which one is used is read when the first context is asked for, so that a host may still change its settings.</summary>
    public static void AddStore(this IServiceCollection services, IConfiguration configuration, string contentRoot)
    {
        services.AddSingleton(_ => Store.From(configuration, contentRoot));
        services.AddPooledDbContextFactory<SqliteStudioDbContext>((provider, options) =>
            options.UseSqlite(provider.GetRequiredService<Store>().Connection));
        services.AddPooledDbContextFactory<PostgresStudioDbContext>((provider, options) =>
            options.UseNpgsql(provider.GetRequiredService<Store>().Connection));
        services.AddSingleton<IDbContextFactory<StudioDbContext>, StudioContexts>();
        services.AddScoped(provider => provider.GetRequiredService<IDbContextFactory<StudioDbContext>>().CreateDbContext());
    }

    public static async Task MigrateStoreAsync(this IServiceProvider services, CancellationToken cancel)
    {
        Store store = services.GetRequiredService<Store>();
        Directory.CreateDirectory(store.Folder);
        await using StudioDbContext context =
            await services.GetRequiredService<IDbContextFactory<StudioDbContext>>().CreateDbContextAsync(cancel);
        // Asked first, since migrating takes a lock that a program killed meanwhile would leave behind.
        if ((await context.Database.GetPendingMigrationsAsync(cancel)).Any()) await context.Database.MigrateAsync(cancel);
        // Readers don't wait for a writer then. The file remembers it.
        if (store.Kind == StoreKind.Sqlite) await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL", cancel);
    }

    private sealed class StudioContexts(
        Store store,
        IDbContextFactory<SqliteStudioDbContext> sqlite,
        IDbContextFactory<PostgresStudioDbContext> postgres) : IDbContextFactory<StudioDbContext>
    {
        public StudioDbContext CreateDbContext() =>
            store.Kind == StoreKind.Sqlite ? sqlite.CreateDbContext() : postgres.CreateDbContext();
    }
}
