using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor;
using PatternStudio.Craft.Reading;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>The designer's view of her test rounds: who has the pattern, what they said, what it tells.</summary>
public sealed partial class TestingPage
{
    private OpenDesign? design;
    private IReadOnlyList<VersionSummary> versions = [];
    private IReadOnlyList<RoundSummary> rounds = [];
    private IReadOnlyList<string> sizes = [""];
    private RoundBook? book;
    private RoundTelling? telling;
    private bool missing;
    private bool planning;
    private bool changing;

    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    private DesignDesk Desk { get; set; } = null!;

    [Inject]
    private DesignVersions Versions { get; set; } = null!;

    [Inject]
    private TestRounds Rounds { get; set; } = null!;

    [Inject]
    private RoundStatistics Statistics { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private ISnackbar Snackbar { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    /// <summary>Sizes that were wanted and that nobody has yet.</summary>
    private List<string> Lacking => book is null || sizes.Count < 2 ? [] :
    [
        .. book.Plan.Sizes.Where(size => size < sizes.Count
            && !book.Testers.Any(tester => tester.Size == size) && !book.Reports.Any(report => report.Details.Size == size)).Select(size => sizes[size]),
    ];

    protected override async Task OnParametersSetAsync()
    {
        Caller caller = await SignedIn.CallerAsync();
        design = await Desk.OpenAsync(caller, Id);
        missing = design is null;
        if (missing) return;
        versions = await Versions.ListAsync(caller, Id);
        rounds = await Rounds.ListAsync(caller, Id);
        if (rounds.Count > 0) await OpenAsync(book?.Id ?? rounds[0].Id);
    }

    private Task ChooseAsync(ChangeEventArgs change) => Guid.TryParse(change.Value as string, out Guid round) ? OpenAsync(round) : Task.CompletedTask;

    private async Task ReadAsync()
    {
        rounds = await Rounds.ListAsync(await SignedIn.CallerAsync(), Id);
        if (book is not null) await OpenAsync(book.Id);
    }

    private async Task OpenAsync(Guid round)
    {
        Caller caller = await SignedIn.CallerAsync();
        book = await Rounds.OpenAsync(caller, round);
        if (book is null) return;
        VersionText? version = await Versions.FindAsync(caller, Id, book.Plan.Version);
        sizes = version is null ? [""] : [.. PatternReader.Read(version.Text).Sizes];
        telling = book.Reports.Count == 0 ? null : await Statistics.TellAsync(caller, book);
    }

    private void Plan(RoundBook? kept) => (planning, changing) = (true, kept is not null);

    private async Task PlannedAsync(Guid? round)
    {
        planning = false;
        if (round is not { } known) return;
        rounds = await Rounds.ListAsync(await SignedIn.CallerAsync(), Id);
        await OpenAsync(known);
    }

    private async Task EndAsync()
    {
        Outcome ended = await Rounds.EndAsync(await SignedIn.CallerAsync(), book!.Id);
        Snackbar.Add(ended.Succeeded ? Words["RoundEnded"] : ended.ToString(), ended.Succeeded ? MudBlazor.Severity.Normal : MudBlazor.Severity.Warning);
        await ReadAsync();
    }

    private async Task PrintAsync() => await Browser.InvokeVoidAsync("print");

    private string FileOf(string name) => $"designs/{Id}/testing/{book!.Id}/{name}";

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
