using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Features.Testing.Sheets;

namespace PatternStudio.Web.Features.Testing;

/// <summary>Shows the pattern to a tester. Two hundred who open it at once, and have sent nothing yet, get one painted page.</summary>
internal sealed class SheetPages(SheetShelf shelf, KeptPages pages)
{
    public async Task<IResult> ShowAsync(string token, OpenLink link, SheetChoices choices)
    {
        SheetChoices chosen = choices with { Size = choices.Size ?? link.Tester?.Size };
        KeptPage page = await pages.OfAsync<SheetPage>(
            new Shown(link.RoundId, link.Title, link.Studio, link.Text, link.Before, string.Join(',', link.Versions), link.Plan.Ends, link.Plan.Note, link.Plan.ShowsChart, choices, chosen.Size, Own(link)),
            () => Parameters(link, choices, shelf.Sheet(link.Text, choices.Terms, chosen.Size ?? 0)));
        // Whoever opened the door has a token as it was made: letters, digits, '-' and '_'.
        return page.For(token);
    }

    private Dictionary<string, object?> Parameters(OpenLink link, SheetChoices choices, Sheet sheet) => new()
    {
        [nameof(SheetPage.Token)] = pages.StandIn(0),
        [nameof(SheetPage.Link)] = link,
        [nameof(SheetPage.Sheet)] = sheet,
        [nameof(SheetPage.Choices)] = choices,
        [nameof(SheetPage.Changes)] = link.Before is { } before ? RowChanges.Between(shelf.Sheet(before.Text, choices.Terms, sheet.Size), sheet) : Array.Empty<RowChange>(),
        [nameof(SheetPage.Cautions)] = shelf.Cautions(link.Title, link.Text),
    };

    /// <summary>What is hers alone on the page: her reports, and the answers to her remarks.</summary>
    private static string Own(OpenLink link) => string.Join('\n', [
        .. link.Reports.Select(report => $"{report.Id:N} {report.Sent:O}"),
        .. link.Remarks.Where(remark => remark.Answer.Kind != AnswerKind.None).Select(remark => $"{remark.Id:N} {remark.Answer}"),
    ]);

    /// <summary>All that the page shows; equal where the pages are.</summary>
    private sealed record Shown(
        Guid Round, string Title, string Studio, string Text, VersionBefore? Before, string Versions, DateOnly Ends, string Note, bool ShowsChart, SheetChoices Choices, int? Size, string Own);
}
