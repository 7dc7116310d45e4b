using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using PatternStudio.Studio;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Features.Testing.Reporting;
using PatternStudio.Web.Features.Testing.Sheets;

namespace PatternStudio.Web.Features.Testing;

/// <summary>Shows the report form, new or with what was typed and what is wrong with it.</summary>
internal sealed class FormPages(SheetShelf shelf, ReportForm form, IAntiforgery antiforgery)
{
    public RazorComponentResult<ReportPage> Show(HttpContext http, string token, OpenLink link, ReportInput input, IReadOnlyList<FieldMessage> messages)
    {
        SheetChoices choices = SheetChoices.Read(http.Request.Query);
        Sheet sheet = shelf.Sheet(link.Text, choices.Terms, choices.Size ?? link.Tester?.Size ?? 0);
        // The antiforgery kit sets its own headers for caches, and complains of others; ours are stricter.
        http.Response.Headers.CacheControl = default;
        AntiforgeryTokenSet seal = antiforgery.GetAndStoreTokens(http);
        TesterPages.Guard(http.Response.Headers);
        return new RazorComponentResult<ReportPage>(new Dictionary<string, object?>
        {
            [nameof(ReportPage.Token)] = token,
            [nameof(ReportPage.Link)] = link,
            [nameof(ReportPage.Input)] = input,
            [nameof(ReportPage.Choices)] = choices,
            [nameof(ReportPage.Sizes)] = sheet.Sizes,
            [nameof(ReportPage.Rows)] = sheet.Rows.ToArray(),
            [nameof(ReportPage.Messages)] = messages,
            [nameof(ReportPage.AntiforgeryField)] = seal.FormFieldName,
            [nameof(ReportPage.AntiforgeryToken)] = seal.RequestToken,
            [nameof(ReportPage.Opened)] = form.SealNow(),
        }) { StatusCode = messages.Count > 0 ? StatusCodes.Status422UnprocessableEntity : null };
    }
}
