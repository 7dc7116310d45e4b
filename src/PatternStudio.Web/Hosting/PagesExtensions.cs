using MudBlazor;
using MudBlazor.Services;
using PatternStudio.Web.Features.Accounts;
using PatternStudio.Web.Features.Designs;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Features.Testing;
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
        services.AddTesterPages();
        services.AddResponseCompression();
    }

    public static void UsePages(this WebApplication app)
    {
        if (!app.Environment.IsDevelopment()) app.UseExceptionHandler("/trouble", createScopeForErrors: true);
        app.UseResponseCompression();
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseSecurityHeaders();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseAntiforgery();
        app.UseRateLimiter();
        app.MapStaticAssets();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
        app.MapSignOut();
        app.MapChartPictures();
        app.MapPhotoPictures();
        app.MapTesterPages();
    }
}
