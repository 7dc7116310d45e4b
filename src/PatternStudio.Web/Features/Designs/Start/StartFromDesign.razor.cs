using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Designs.Start;

/// <summary>Begins a design from another one: a new size or shape of the same stitch.</summary>
public sealed partial class StartFromDesign
{
    private IReadOnlyList<DesignSummary> found = [];
    private DesignSummary? chosen;
    private string search = "";
    private string title = "";
    private IReadOnlyList<FieldMessage> messages = [];

    [Inject]
    private DesignLibrary Library { get; set; } = null!;

    [Inject]
    private DesignCopies Copies { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    protected override Task OnInitializedAsync() => FindAsync("");

    private Task SearchAsync(ChangeEventArgs change) => FindAsync((change.Value as string ?? "").Trim());

    private async Task FindAsync(string words)
    {
        search = words;
        IReadOnlyList<DesignSummary> answer = (await Library.ListAsync(await SignedIn.CallerAsync(), new DesignQuery(words, PageSize: 24))).Designs;
        if (words == search) found = answer;
    }

    private void Choose(DesignSummary design)
    {
        chosen = design;
        title = Words["CopyOf", design.Title];
        messages = [];
    }

    private async Task CopyAsync()
    {
        Outcome<Guid> begun = await Copies.CopyAsync(await SignedIn.CallerAsync(), chosen!.Id, title);
        messages = begun.Messages;
        if (begun.Succeeded) Navigation.NavigateTo($"designs/{begun.Value}");
    }
}
