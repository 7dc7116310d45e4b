using System.Security.Claims;
using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Localization;
using PatternStudio.Craft.Reading;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>A round to take away: its reports as a table, its days as a calendar.</summary>
internal static class RoundFiles
{
    public static void MapRoundFiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/designs/{id:guid}/testing/{round:guid}/reports.csv", GiveReportsAsync).RequireAuthorization();
        routes.MapGet("/designs/{id:guid}/testing/{round:guid}/round.ics", GiveCalendarAsync).RequireAuthorization();
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> GiveReportsAsync(
        Guid id, Guid round, HttpContext http, Memberships memberships, TestRounds rounds, DesignVersions versions, CancellationToken cancel)
    {
        if (await memberships.CallerAsync(AccountOf(http), cancel) is not { } caller || await rounds.OpenAsync(caller, round, cancel) is not { } book || book.DesignId != id)
            return TypedResults.NotFound();
        string text = (await versions.FindAsync(caller, id, book.Plan.Version, cancel))?.Text ?? "";
        http.Response.Headers.CacheControl = "no-store";
        // The mark at its beginning tells spreadsheets that it is UTF-8.
        return TypedResults.Bytes(Encoding.UTF8.GetBytes("\ufeff" + ReportsCsv.Write(book, [.. PatternReader.Read(text).Sizes])), "text/csv; charset=utf-8", "reports.csv");
    }

    private static async Task<Results<FileContentHttpResult, NotFound>> GiveCalendarAsync(
        Guid id, Guid round, HttpContext http, Memberships memberships, TestRounds rounds, IStringLocalizer<TestingWords> words, TimeProvider clock, CancellationToken cancel)
    {
        if (await memberships.CallerAsync(AccountOf(http), cancel) is not { } caller || await rounds.OpenAsync(caller, round, cancel) is not { } book || book.DesignId != id)
            return TypedResults.NotFound();
        string calendar = RoundCalendar.Write(book, words["CalendarOpens", book.Title], words["CalendarEnds", book.Title], clock.GetUtcNow());
        return TypedResults.Bytes(Encoding.UTF8.GetBytes(calendar), "text/calendar; charset=utf-8", "round.ics");
    }

    private static Guid AccountOf(HttpContext http) => Guid.TryParse(http.User.FindFirstValue(ClaimTypes.NameIdentifier), out Guid account) ? account : Guid.Empty;
}
