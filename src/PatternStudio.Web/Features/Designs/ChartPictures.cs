using System.Security.Claims;
using Microsoft.AspNetCore.Http.HttpResults;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;

namespace PatternStudio.Web.Features.Designs;

/// <summary>Charts as pictures of their own, for lists: as stored. An address names a version, so a browser may keep what it got.</summary>
internal static class ChartPictures
{
    public static void MapChartPictures(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/designs/{id:guid}/chart", FindAsync).RequireAuthorization();

    private static async Task<Results<FileContentHttpResult, ContentHttpResult, NotFound>> FindAsync(
        Guid id, HttpContext http, Memberships memberships, DesignPictures pictures, CancellationToken cancel)
    {
        if (!Guid.TryParse(http.User.FindFirstValue(ClaimTypes.NameIdentifier), out Guid account)
            || await memberships.CallerAsync(account, cancel) is not { } caller)
            return TypedResults.NotFound();
        http.Response.Headers.CacheControl = "private, max-age=604800, immutable";
        return await pictures.FindAsync(caller, id, cancel) is { } picture
            ? TypedResults.File(picture, "image/png")
            : TypedResults.Content(NoChart, "image/svg+xml");
    }

    /// <summary>A row of empty chains: nothing to draw yet.</summary>
    private const string NoChart =
        """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 160 100" width="160" height="100"><g fill="none" stroke="#868372" stroke-width="1.6" stroke-dasharray="3 3"><ellipse cx="40" cy="50" rx="11" ry="6"/><ellipse cx="67" cy="50" rx="11" ry="6"/><ellipse cx="94" cy="50" rx="11" ry="6"/><ellipse cx="121" cy="50" rx="11" ry="6"/></g></svg>""";
}
