using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>The links of a round: made, copied once, taken back.</summary>
public sealed partial class LinksPanel
{
    private IReadOnlyList<FieldMessage> wrong = [];
    private MadeLink? made;
    private string madeFor = "";
    private string name = "";
    private int size = -1;

    [Parameter, EditorRequired]
    public RoundBook Book { get; set; } = null!;

    /// <summary>The design's title, for the mail.</summary>
    [Parameter, EditorRequired]
    public string Title { get; set; } = "";

    [Parameter, EditorRequired]
    public IReadOnlyList<string> Sizes { get; set; } = [];

    [Parameter]
    public EventCallback Changed { get; set; }

    [Inject]
    private ShareLinks Links { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    [Inject]
    private ISnackbar Snackbar { get; set; } = null!;

    private async Task MakeForOneAsync() =>
        await MadeAsync(await Links.MakeForAsync(await SignedIn.CallerAsync(), Book.Id, name, size < 0 ? null : size), name.Trim());

    private async Task MakeForAllAsync() =>
        await MadeAsync(await Links.MakeForAllAsync(await SignedIn.CallerAsync(), Book.Id, Book.Plan.Testers), Words["ForAll"]);

    private async Task MadeAsync(Outcome<MadeLink> outcome, string whose)
    {
        wrong = outcome.Messages;
        if (!outcome.Succeeded) return;
        (made, madeFor, name) = (outcome.Value, whose, "");
        await Changed.InvokeAsync();
    }

    private async Task RevokeAsync(KeptLink link)
    {
        Outcome outcome = await Links.RevokeAsync(await SignedIn.CallerAsync(), link.Id);
        if (!outcome.Succeeded) Snackbar.Add(outcome.ToString(), MudBlazor.Severity.Warning);
        if (made?.Id == link.Id) made = null;
        await Changed.InvokeAsync();
    }

    private async Task CopyAsync(string text)
    {
        try
        {
            await Browser.InvokeVoidAsync("navigator.clipboard.writeText", text);
            Snackbar.Add(Words["Copied"]);
        }
        catch (JSException)
        {
            // Browsers give the clipboard to secure pages only: the text stands there to be marked.
            Snackbar.Add(Words["NotCopied"], MudBlazor.Severity.Warning);
        }
    }

    private string AddressOf(MadeLink link) => new Uri(new Uri(Navigation.BaseUri), $"t/{link.Token}").ToString();

    private string Mail(MadeLink link) =>
        Words["Mail", Title, AddressOf(link), Book.Plan.Ends.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)].Value.Replace("|", "\n", StringComparison.Ordinal);
}
