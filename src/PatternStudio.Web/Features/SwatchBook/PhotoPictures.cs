using System.Security.Claims;
using Microsoft.AspNetCore.Http.HttpResults;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Web.Features.SwatchBook;

/// <summary>Gives photos to members of their studio. A photo never changes, so a browser may keep what it got.</summary>
internal static class PhotoPictures
{
    /// <summary>A picture needs nothing and may do nothing, should a browser ever take it for a page.</summary>
    private const string NothingAtAll = "default-src 'none'; sandbox; frame-ancestors 'none'";

    public static void MapPhotoPictures(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/photos/{id:guid}", GiveAsync).RequireAuthorization();

    private static async Task<Results<FileContentHttpResult, NotFound>> GiveAsync(
        Guid id, HttpContext http, Memberships memberships, Photos photos, CancellationToken cancel, bool small = false)
    {
        if (!Guid.TryParse(http.User.FindFirstValue(ClaimTypes.NameIdentifier), out Guid account)
            || await memberships.CallerAsync(account, cancel) is not { } caller
            || await photos.FindAsync(caller, id, small, cancel) is not { } picture)
            return TypedResults.NotFound();
        http.Response.Headers.ContentSecurityPolicy = NothingAtAll;
        http.Response.Headers.ContentDisposition = "inline; filename=\"photo.jpg\"";
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return TypedResults.Bytes(picture, "image/jpeg");
    }
}
