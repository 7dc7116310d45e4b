using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Data;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Exchange;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Rounds;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio;

/// <summary>Registers the studio.</summary>
public static class AddStudioExtensions
{
    /// <summary>Adds the store, the accounts and the services of the studio. Sign-in itself (cookies) is the host's.</summary>
    /// <param name="configuration">Its section 'Store' is described at <see cref="Store"/>.</param>
    /// <param name="contentRoot">What a relative data folder is relative to; null for the current folder.</param>
    public static IServiceCollection AddStudio(
        this IServiceCollection services, IConfiguration configuration, string? contentRoot = null)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.TryAddSingleton(configuration);
        services.AddStore(configuration, contentRoot ?? Directory.GetCurrentDirectory());
        services.AddAccounts();
        services.AddSingleton<StudioSetup>();
        services.AddSingleton<Memberships>();
        services.AddSingleton<PreferenceBook>();
        services.AddSingleton<People>();
        services.AddSingleton<DesignLibrary>();
        services.AddSingleton<DesignDesk>();
        services.AddSingleton<DesignBatch>();
        services.AddSingleton<DesignCopies>();
        services.AddSingleton<DesignPictures>();
        services.AddSingleton<DesignPhotos>();
        services.AddSingleton<DesignTags>();
        services.AddSingleton<TextImport>();
        services.AddSingleton<YarnImport>();
        services.AddSingleton<ArchiveWriter>();
        services.AddSingleton<ArchiveImport>();
        services.AddSingleton<DesignVersions>();
        services.AddSingleton<Drafts>();
        services.AddSingleton<SavedNews>();
        services.AddSingleton<DesignRefresh>();
        services.AddSingleton<Swatches>();
        services.AddSingleton<Photos>();
        services.AddSingleton<Yarns>();
        services.AddSingleton<ColourYarns>();
        services.AddSingleton<Stash>();
        services.AddSingleton<StashDesigns>();
        services.AddSingleton<TestRounds>();
        services.AddSingleton<ShareLinks>();
        services.AddSingleton<VersionTexts>();
        services.AddSingleton<TestersDoor>();
        services.AddSingleton<WritersTurn>();
        services.AddSingleton<Openings>();
        services.AddSingleton<TesterReports>();
        services.AddSingleton<RemarkAnswers>();
        services.AddSingleton<RoundStatistics>();
        services.AddSingleton<Corrections>();
        return services;
    }

    /// <summary>Brings the store up to date (creating folder and file where there are none). Call it once, before the host starts.</summary>
    public static Task MigrateStudioAsync(this IServiceProvider services, CancellationToken cancel = default) =>
        services.MigrateStoreAsync(cancel);
}
