using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio;

/// <summary>Registers the studio.</summary>
public static class AddStudioExtensions
{
    /// <summary>Adds the store, the accounts and the services of the studio. Sign-in itself (cookies) is the host's.</summary>
    public static IServiceCollection AddStudio(this IServiceCollection services, IConfiguration configuration)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddStore(configuration);
        services.AddSingleton<StudioSetup>();
        services.AddSingleton<Memberships>();
        services.AddSingleton<DesignLibrary>();
        services.AddSingleton<DesignDesk>();
        services.AddSingleton<Swatches>();
        services.AddSingleton<Yarns>();
        return services;
    }

    /// <summary>Brings the store up to date (creating folder and file where there are none). Call it once, before the host starts.</summary>
    public static async Task MigrateStudioAsync(this IServiceProvider services, CancellationToken cancel = default)
    {
        await using StudioDbContext context =
            await services.GetRequiredService<IDbContextFactory<StudioDbContext>>().CreateDbContextAsync(cancel);
        await context.Database.MigrateAsync(cancel);
    }
}
