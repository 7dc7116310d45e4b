using MudBlazor;
using MudBlazor.Services;
using PatternStudio.Web.Features.Accounts;
using PatternStudio.Web.Features.Designs;
using PatternStudio.Web.Features.Designs.Exchange;
using PatternStudio.Web.Features.Designs.Start;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Features.Testing;
using PatternStudio.Web.Features.Tour;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Hosting;

/// <summary>The pages and what carries them.</summary>
internal static class PagesExtensions
{
    /// <summary>A pasted pattern may be long: the reader takes up to 2 million characters, up to 3 bytes each.</summary>
    private const long LongestMessage = 6L * 1024 * 1024;

    public static void AddPages(this IServiceCollection services)
    {
        services.AddLocalization();
        services.AddRazorComponents().AddInteractiveServerComponents()
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = LongestMessage);
        services.AddMudServices(kit => kit.SnackbarConfiguration.PositionClass = Defaults.Classes.Position.BottomCenter);
        services.AddSingleton<Moments>();
        services.AddSingleton<ExportTickets>();
        services.AddHostedService<RefreshAtStart>();
        services.AddScoped<Guide>();
        services.AddTesterPages();
        services.AddResponseCompression();
    }

    public static void UsePages(this WebApplication app)
    {
        app.UseKnownProxies();
        if (!app.Environment.IsDevelopment()) app.UseExceptionHandler("/trouble", createScopeForErrors: true);
        app.UseResponseCompression();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseSecurityHeaders();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseManner();
        app.UseAntiforgery();
        app.UseRateLimiter();
        app.MapStaticAssets();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
        app.MapSignOut();
        app.MapChartPictures();
        app.MapStitchPictures();
        app.MapExport();
        app.MapPhotoPictures();
        app.MapTesterPages();
    }
}
