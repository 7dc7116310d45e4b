using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Studio.Data;

/// <summary>Registers the store.</summary>
internal static class StoreExtensions
{
    public static void AddStore(this IServiceCollection services, IConfiguration configuration)
    {
        Store store = configuration.GetSection("Store").Get<Store>() ?? new Store();
        if (store.Kind.Equals("Postgres", StringComparison.OrdinalIgnoreCase))
            services.AddStore<PostgresStudioDbContext>(options => options.UseNpgsql(store.Connection));
        else
            services.AddStore<SqliteStudioDbContext>(options => options.UseSqlite(store.Connection));
        services.AddIdentityCore<Account>().AddEntityFrameworkStores<StudioDbContext>();
    }

    private static void AddStore<TContext>(this IServiceCollection services, Action<DbContextOptionsBuilder> configure)
        where TContext : StudioDbContext
    {
        services.AddDbContextFactory<TContext>(configure);
        services.AddSingleton<IDbContextFactory<StudioDbContext>, AnyStoreFactory<TContext>>();
        services.AddScoped<StudioDbContext>(provider => provider.GetRequiredService<TContext>());
    }

    /// <summary>Hands out contexts of whichever store is configured.</summary>
    private sealed class AnyStoreFactory<TContext>(IDbContextFactory<TContext> contexts) : IDbContextFactory<StudioDbContext>
        where TContext : StudioDbContext
    {
        public StudioDbContext CreateDbContext() => contexts.CreateDbContext();
    }
}
