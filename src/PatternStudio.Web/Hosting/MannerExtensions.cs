using System.Security.Claims;
using Microsoft.AspNetCore.Components.Endpoints;
using PatternStudio.Studio.Accounts;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Hosting;

/// <summary>Asks once for each page, and once for the connection that keeps it alive, how its reader likes to read.</summary>
internal static class MannerExtensions
{
    public static void UseManner(this WebApplication app) => app.Use(async (context, next) =>
    {
        if (IsPage(context) && Guid.TryParse(context.User.FindFirstValue(ClaimTypes.NameIdentifier), out Guid account))
            Manner.Take(await context.RequestServices.GetRequiredService<PreferenceBook>().OfAsync(account, context.RequestAborted));
        await next(context);
    });

    private static bool IsPage(HttpContext context) =>
        context.Request.Path.StartsWithSegments("/_blazor") || context.GetEndpoint()?.Metadata.GetMetadata<ComponentTypeMetadata>() is not null;
}
