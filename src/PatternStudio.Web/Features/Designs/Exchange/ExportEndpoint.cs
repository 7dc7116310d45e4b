using System.Globalization;
using System.Security.Claims;
using Microsoft.AspNetCore.Http.Features;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Exchange;

namespace PatternStudio.Web.Features.Designs.Exchange;

/// <summary>Sends archives: of the whole studio, or of the designs of a ticket.</summary>
internal static class ExportEndpoint
{
    public static void MapExport(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/designs/export", (HttpContext http, Memberships memberships, ArchiveWriter archive, TimeProvider clock, CancellationToken cancel) =>
            SendAsync(http, memberships, archive, clock, _ => null, cancel)).RequireAuthorization();
        routes.MapGet("/designs/export/{ticket:guid}", (Guid ticket, HttpContext http, Memberships memberships, ArchiveWriter archive, ExportTickets tickets, TimeProvider clock, CancellationToken cancel) =>
            SendAsync(http, memberships, archive, clock, caller => tickets.Find(caller, ticket) ?? [], cancel)).RequireAuthorization();
    }

    /// <param name="designs">Null for the whole studio.</param>
    private static async Task SendAsync(
        HttpContext http, Memberships memberships, ArchiveWriter archive, TimeProvider clock, Func<Caller, IReadOnlyList<Guid>?> designs, CancellationToken cancel)
    {
        if (!Guid.TryParse(http.User.FindFirstValue(ClaimTypes.NameIdentifier), out Guid account)
            || await memberships.CallerAsync(account, cancel) is not { } caller
            || designs(caller) is { Count: 0 })
        {
            http.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        // A zip's directory is written without waiting; it is short.
        if (http.Features.Get<IHttpBodyControlFeature>() is { } body) body.AllowSynchronousIO = true;
        string day = clock.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        http.Response.ContentType = "application/zip";
        http.Response.Headers.ContentDisposition = $"attachment; filename=\"designs-{day}.zip\"";
        http.Response.Headers.CacheControl = "no-store";
        await archive.WriteAsync(caller, designs(caller), http.Response.Body, cancel);
    }
}
