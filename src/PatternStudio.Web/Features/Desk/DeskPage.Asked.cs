using Microsoft.AspNetCore.Components;
using PatternStudio.Web.Features.Testing.Sheets;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A row that somebody spoke of, named in the address: the cursor goes there when the desk opens, once.</summary>
public sealed partial class DeskPage
{
    private bool wentToAskedRow;

    /// <summary>'Row 7', 'Border, Rnd 1'; null for none.</summary>
    [SupplyParameterFromQuery(Name = "row")]
    private string? AskedRow { get; set; }

    /// <summary>The first answer comes when the editor is open. A row that is no longer there leaves the cursor where it is.</summary>
    private async Task GoToAskedRowAsync()
    {
        if (wentToAskedRow || AskedRow is not { Length: > 0 } name || answer?.Input.Text != text) return;
        wentToAskedRow = true;
        if (Results.Sizes.Prepend(Size).Select(worked => RowNames.LineOf(worked.Rows, name)).FirstOrDefault(found => found is not null) is { } line)
            await GoToLineAsync(line);
    }
}
