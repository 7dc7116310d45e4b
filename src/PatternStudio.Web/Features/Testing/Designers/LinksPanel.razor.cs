using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor;
using PatternStudio.Studio;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>The links of a round: made, copied once, taken back.</summary>
public sealed partial class LinksPanel
{
    private IReadOnlyList<FieldMessage> wrong = [];
    private IReadOnlyList<FieldMessage> wrongForAll = [];
    private MadeLink? made;
    private bool madeForAll;
    private DateOnly madeUntil;
    private DateOnly? lastDay;
    private DateOnly? lastDayForAll;
    private string? most;
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

    private string Reminder => Lines(Words["Reminder", Title, LongDay.Of(Book.Plan.Ends)]);

    protected override void OnParametersSet() => most ??= Book.Plan.Testers.ToString(CultureInfo.InvariantCulture);

    private async Task MakeForOneAsync()
    {
        Outcome<MadeLink> outcome = await Links.MakeForAsync(await SignedIn.CallerAsync(), Book.Id, name, size < 0 ? null : size, lastDay);
        wrong = outcome.Messages;
        if (outcome.Succeeded) await ShowAsync(outcome.Value!, name.Trim(), false, lastDay);
    }

    private async Task MakeForAllAsync()
    {
        TypedNumber number = Typed.Whole(most ?? "");
        Outcome<MadeLink> outcome = number.Trouble is { } trouble
            ? Outcome.Refused("mostReports", trouble)
            : await Links.MakeForAllAsync(await SignedIn.CallerAsync(), Book.Id, (int)Math.Clamp(number.Value, 0, int.MaxValue), lastDayForAll);
        wrongForAll = outcome.Messages;
        if (outcome.Succeeded) await ShowAsync(outcome.Value!, Words["ForAll"], true, lastDayForAll);
    }

    private async Task ShowAsync(MadeLink link, string whose, bool forAll, DateOnly? until)
    {
        (made, madeFor, madeForAll, madeUntil, name) = (link, whose, forAll, until ?? Book.Plan.Ends, "");
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
        if (await Browser.CopyAsync(text)) Snackbar.Add(Words["Copied"]);
        // The text stands there to be marked.
        else Snackbar.Add(Words["NotCopied"], MudBlazor.Severity.Warning);
    }

    private string AddressOf(MadeLink link) => new Uri(new Uri(Navigation.BaseUri), $"t/{link.Token}").ToString();

    private string Mail(MadeLink link) =>
        Lines(Words[madeForAll ? "MailForAll" : "Mail", Title, AddressOf(link), LongDay.Of(madeUntil), Book.Begun ? "" : Words["MailBegins", LongDay.Of(Book.Plan.Opens)].Value, madeFor]);

    private static string Lines(string text) => text.Replace("|", "\n", StringComparison.Ordinal);
}
