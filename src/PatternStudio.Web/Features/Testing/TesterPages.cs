using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using PatternStudio.Studio;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Features.Testing.Designers;
using PatternStudio.Web.Features.Testing.Reporting;
using PatternStudio.Web.Features.Testing.Sheets;

namespace PatternStudio.Web.Features.Testing;

/// <summary>The pages that strangers open: plain HTML, no account, nothing that a search engine or a cache may keep.</summary>
internal static class TesterPages
{
    /// <summary>As many photos as the form has places for, each as large as may be: what is wrong with one is said beside it.</summary>
    private const long LargestForm = (1 + ReportInput.RemarkPlaces) * (PhotoReader.MostBytes + 1024L * 1024);

    /// <summary>A photo that a form carries back and forth is a text of some hundred thousand letters.</summary>
    private const int LongestField = 4 * 1024 * 1024;

    public static void AddTesterPages(this IServiceCollection services)
    {
        services.AddSingleton<SheetShelf>();
        services.AddSingleton<KeptPages>();
        services.AddSingleton<SheetPages>();
        services.AddSingleton<ReportForm>();
        services.AddSingleton<FormPages>();
        services.AddTesterLimits();
    }

    public static void MapTesterPages(this IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder pages = routes.MapGroup("/t/{token}").AddEndpointFilter(KeepPrivateAsync).RequireRateLimiting(TesterLimits.Policy);
        pages.MapGet("", ShowSheetAsync);
        pages.MapGet("chart.svg", ShowChartAsync);
        pages.MapGet("report", ShowFormAsync);
        pages.MapPost("report", TakeReportAsync).WithMetadata(new RequestSizeLimitAttribute(LargestForm)).RequireRateLimiting(TesterLimits.SendPolicy);
        pages.MapGet("thanks", ShowThanksAsync);
        routes.MapGet("/corrections/{id:guid}", ShowCorrectionsAsync);
        routes.MapRoundFiles();
    }

    /// <summary>The address is the key: it must not go anywhere with a click, into an index, or into a shared cache.</summary>
    private static ValueTask<object?> KeepPrivateAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        Guard(call.HttpContext.Response.Headers);
        return next(call);
    }

    internal static void Guard(IHeaderDictionary headers)
    {
        headers.CacheControl = "no-store";
        headers["Referrer-Policy"] = "no-referrer";
        headers["X-Robots-Tag"] = "noindex, nofollow, noarchive";
    }

    private static async Task<IResult> ShowSheetAsync(string token, HttpContext http, TestersDoor door, SheetPages pages)
    {
        if (await OpenAsync(token, http, door) is not { } link) return Closed();
        SheetChoices choices = SheetChoices.Read(http.Request.Query);
        if (link.Tester is null || choices.From is not null) BeganCookie.Keep(http, token, link.BeganWith);
        return await pages.ShowAsync(token, link, choices);
    }

    private static Task<OpenLink?> OpenAsync(string token, HttpContext http, TestersDoor door, bool withReports = true) =>
        door.OpenAsync(token, SheetChoices.Read(http.Request.Query).From ?? BeganCookie.Of(http), withReports, http.RequestAborted);

    private static async Task<IResult> ShowChartAsync(string token, HttpContext http, TestersDoor door, SheetShelf shelf)
    {
        if (await OpenAsync(token, http, door, withReports: false) is not { Plan.ShowsChart: true } link) return Closed();
        SheetChoices choices = SheetChoices.Read(http.Request.Query);
        http.Response.Headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'";
        return TypedResults.Content(shelf.Chart(link.Text, choices.Terms, choices.Size ?? link.Tester?.Size ?? 0), "image/svg+xml");
    }

    private static async Task<IResult> ShowFormAsync(string token, HttpContext http, TestersDoor door, FormPages pages)
    {
        if (await OpenAsync(token, http, door) is not { } link) return Closed();
        KeptReport? before = Guid.TryParse(http.Request.Query["add"], out Guid report) ? link.Reports.FirstOrDefault(it => it.Id == report) : null;
        int? size = SheetChoices.Read(http.Request.Query).Size ?? link.Tester?.Size;
        return pages.Show(http, token, link, before is null ? ReportInput.Empty(size, link.BeganWith) : ReportInput.From(before), []);
    }

    private static async Task<IResult> TakeReportAsync(string token, HttpContext http, TestersDoor door, TesterReports reports, ReportForm form, FormPages pages, IAntiforgery antiforgery)
    {
        if (await OpenAsync(token, http, door, withReports: false) is not { } link) return Closed();
        if (await FormAsync(http) is not { } posted) return pages.Show(http, token, link, ReportInput.Empty(null, link.BeganWith), [TooLarge]);
        PostedReport read = await form.ReadAsync(posted, (link.Plan.Asked & AskedFor.Photos) != 0, http.RequestAborted);
        if (!await antiforgery.IsRequestValidAsync(http))
            return pages.Show(http, token, link, read.Input, [.. read.Messages, new FieldMessage("", "The form was open for a long time, or cookies are switched off. Nothing is lost: send it again.")]);
        if (read.Messages.Count > 0) return pages.Show(http, token, link, read.Input, read.Messages);
        (SentReport sent, int[] places) = Sent(read);
        Outcome<ArrivedReport> arrived = await reports.SendAsync(token, sent, http.RequestAborted);
        return arrived.Succeeded
            ? TypedResults.LocalRedirect($"/t/{arrived.Value!.OwnToken ?? token}/thanks?report={arrived.Value.Id}", permanent: false, preserveMethod: false)
            : pages.Show(http, token, link, read.Input, [.. arrived.Messages.Select(message => InPlace(message, places))]);
    }

    private static readonly FieldMessage TooLarge = new("", "What you sent is too large, perhaps a film instead of a photo. Choose smaller photos; go back in your browser if your words are missing here.");

    /// <summary>The form as it came; null where it is too large to be read.</summary>
    private static async Task<IFormCollection?> FormAsync(HttpContext http)
    {
        try
        {
            return await http.Request.ReadFormAsync(new() { ValueLengthLimit = LongestField, MultipartBodyLengthLimit = LargestForm }, http.RequestAborted);
        }
        catch (Exception exception) when (exception is InvalidDataException or BadHttpRequestException)
        {
            return null;
        }
    }

    /// <summary>What is sent on: places for remarks that were left empty are left out, so each remark remembers its place.</summary>
    private static (SentReport Sent, int[] Places) Sent(PostedReport read)
    {
        int[] places = [.. Enumerable.Range(0, read.Input.Remarks.Count).Where(at => !read.Input.Remarks[at].IsEmpty)];
        return (new SentReport(read.Input["Name"], read.Details,
            [.. places.Select(at => read.Input.Remarks[at]).Select(remark => new SentRemark(new RemarkDetails(remark.Row, remark.Word, remark.Text), remark.Photo?.Prepared))])
        {
            Photo = read.Input.Photo?.Prepared,
            AddsTo = read.Input.AddsTo,
            Version = read.Input.Version,
        }, places);
    }

    private static FieldMessage InPlace(FieldMessage message, int[] places)
    {
        for (int at = places.Length - 1; at >= 0; at--)
            if (message.Field.StartsWith($"Remarks[{at}]", StringComparison.Ordinal))
                return message with { Field = $"Remarks[{places[at]}]{message.Field[$"Remarks[{at}]".Length..]}" };
        return message;
    }

    private static async Task<IResult> ShowThanksAsync(string token, HttpContext http, TestersDoor door, SheetShelf shelf)
    {
        if (await OpenAsync(token, http, door) is not { } link
            || !Guid.TryParse(http.Request.Query["report"], out Guid id) || link.Reports.FirstOrDefault(it => it.Id == id) is not { } report) return Closed();
        return new RazorComponentResult<ThanksPage>(new Dictionary<string, object?>
        {
            [nameof(ThanksPage.Token)] = token,
            [nameof(ThanksPage.Link)] = link,
            [nameof(ThanksPage.Report)] = report,
            [nameof(ThanksPage.Telling)] = shelf.Telling(link.Text, report.Details),
            [nameof(ThanksPage.Choices)] = SheetChoices.Read(http.Request.Query),
        });
    }

    private static async Task<IResult> ShowCorrectionsAsync(Guid id, HttpContext http, Corrections corrections) =>
        await corrections.FindAsync(id, http.RequestAborted) is { } sheet
            ? new RazorComponentResult<CorrectionsPage>(new Dictionary<string, object?> { [nameof(CorrectionsPage.Sheet)] = sheet })
            : Closed();

    /// <summary>Wrong, taken back, over: one answer for all.</summary>
    private static RazorComponentResult<ClosedPage> Closed() => new() { StatusCode = StatusCodes.Status404NotFound };
}
