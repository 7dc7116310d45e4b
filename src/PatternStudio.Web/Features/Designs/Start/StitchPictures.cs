using Microsoft.AspNetCore.Http.HttpResults;
using PatternStudio.Studio.StitchLibrary;

namespace PatternStudio.Web.Features.Designs.Start;

/// <summary>The small charts of the stitch library.</summary>
internal static class StitchPictures
{
    public static void MapStitchPictures(this IEndpointRouteBuilder routes) => routes.MapGet("/stitches/{key}", Find).RequireAuthorization();

    private static Results<FileContentHttpResult, NotFound> Find(string key, HttpContext http)
    {
        if (StitchShelf.Find(key) is not { } stitch || StitchShelf.Picture(stitch) is not { } picture) return TypedResults.NotFound();
        http.Response.Headers.CacheControl = "private, max-age=86400";
        return TypedResults.File(picture, "image/png");
    }
}
