using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using MudBlazor;
using PatternStudio.Craft.Checking;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A design on the desk: its words, and beside them everything computed from them.</summary>
public sealed partial class DeskPage : IAsyncDisposable
{
    private static readonly DeskView[] AllViews = Enum.GetValues<DeskView>();
    private static readonly DeskView[] SideViews = [DeskView.Rows, DeskView.Chart, DeskView.Materials, DeskView.Photos];
    private readonly DeskNumbers numbers = new(DeskNumbers.Find, DeskNumbers.Compute);
    private Caller caller = null!;
    private OpenDesign? design;
    private bool missing;
    private WordsEditor? editor;
    private DeskFindings? first;
    private DeskAnswer? answer;
    private IReadOnlyList<RowLine> lines = [];
    private IReadOnlyList<KeptSwatch> swatches = [];
    private IReadOnlyList<KeptYarn> yarns = [];
    private DeskView view = DeskView.Words;
    private bool narrow;

    /// <summary>True once the browser has told how much room there is: a desk laid out before would be laid anew under her fingers.</summary>
    private bool knowsRoom;
    private IReadOnlyList<KeptLot> lots = [];
    private IReadOnlyList<CautionKind> cautions = [];
    private int size;
    private int? reached;
    private int? caretLine;
    private string? trouble;
    private DotNetObjectReference<DeskPage>? here;
    private IJSObjectReference? room;

    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    private DesignDesk Desk { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private IDialogService Dialogs { get; set; } = null!;

    [Inject]
    private ISnackbar Snackbar { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private Moments Moments { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    [Inject]
    private ILogger<DeskPage> Log { get; set; } = null!;

    private Results Results => answer?.Results ?? design!.Results;

    /// <summary>What was found in the latest words, whether or not their numbers are there yet.</summary>
    private IReadOnlyList<LocatedFinding> Findings => first?.Findings ?? Results.Findings;

    private ReadSummary ReadSoFar => first is { Pattern.Sizes: var sizes } ? sizes[Math.Min(size, sizes.Count - 1)].Read : Size.Read;

    private SizeResults Size => Results.Sizes[Math.Min(size, Results.Sizes.Count - 1)];

    private DeskView SideView => view == DeskView.Words ? DeskView.Rows : view;

    private int[] SizePlaces => [.. Enumerable.Range(0, Results.Sizes.Count)];

    protected override async Task OnInitializedAsync()
    {
        caller = await SignedIn.CallerAsync();
        OpenDesign? opened = await Desk.OpenAsync(caller, Id);
        missing = opened is null;
        if (opened is null) return;
        await ListMaterialsAsync();
        photos = await Photos.ListAsync(caller, Id);
        await ListColoursAsync();
        kept = await Drafts.ListAsync(caller, Id);
        TakeSaved(opened.Text.ReplaceLineEndings("\n"), opened.Version, opened.Updated);
        text = savedText;
        design = opened;
        lines = LinesOfSize();
        cautions = Cautions.For(opened.Title, text);
        Listen();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        here = DotNetObjectReference.Create(this);
        await using IJSObjectReference module =
            await Browser.InvokeAsync<IJSObjectReference>("import", $"./{Assets["scripts/desk.js"]}");
        room = await module.InvokeAsync<IJSObjectReference>("watch", here);
    }

    /// <summary>Told by the browser: there is room for one column only, or for two.</summary>
    [JSInvokable]
    public Task RoomChanged(bool isNarrow) => InvokeAsync(() =>
    {
        (narrow, knowsRoom) = (isNarrow, true);
        StateHasChanged();
    });

    /// <summary>Told by the browser: the key for saving.</summary>
    [JSInvokable]
    public Task SaveKey() => InvokeAsync(SaveAsync);

    public async ValueTask DisposeAsync()
    {
        listening?.Dispose();
        if (design is not null) await KeepDraftAsync();
        try
        {
            if (room is not null)
            {
                await room.InvokeVoidAsync("dispose");
                await room.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and with it what was to be let go.
        }

        here?.Dispose();
    }

    private async Task TypedAsync(string words)
    {
        text = words;
        KeepDraftSoon();
        await ComputeAsync();
    }

    private async Task ComputeAsync()
    {
        try
        {
            await numbers.AskAsync(new DeskInput(text, DesignMaterials.From(swatches, yarns, design!.YarnId)), TakeFindingsAsync, TakeAsync);
        }
        catch (Exception fault) when (fault is not JSDisconnectedException)
        {
            // The words must stay usable whatever the checker does: say so, and keep the last numbers off the page's word.
            Log.LogError(fault, "The words of design {Design} could not be checked", Id);
            trouble = Words["CheckFailed"];
        }
    }

    /// <summary>The findings come first; their numbers follow.</summary>
    private async Task TakeFindingsAsync(DeskFindings found)
    {
        (first, trouble) = (found, null);
        await ShowMarksAsync();
        StateHasChanged();
    }

    private async Task TakeAsync(DeskAnswer latest)
    {
        (first, answer, trouble) = (null, latest, null);
        lines = LinesOfSize();
        cautions = Cautions.For(design!.Title, latest.Input.Text);
        await ShowMarksAsync();
        StateHasChanged();
        await GoToAskedRowAsync();
    }

    /// <summary>Marks fit only the words they were computed from.</summary>
    private async Task ShowMarksAsync()
    {
        if (editor is null || (first?.Input ?? answer?.Input)?.Text != text) return;
        await editor.ShowAsync(
            [.. Findings.Select(found => WordMark.Of(found, text, Words[found.Finding.Severity.ToString()]))],
            LineNote.Of(first is { Pattern.Sizes: var sizes } ? sizes[Math.Min(size, sizes.Count - 1)].Rows : Size.Rows, Words["NotChecked"]),
            first?.Folds ?? answer!.Folds);
    }

    private async Task ChooseSizeAsync(int place)
    {
        size = place;
        lines = LinesOfSize();
        await ShowMarksAsync();
    }

    private void Show(DeskView wanted) => view = wanted;

    private async Task GoToAsync(Finding finding)
    {
        reached = finding.Span.Start;
        await editor!.SelectAsync(finding.Span);
    }

    private async Task GoToLineAsync(int line)
    {
        if (narrow) view = DeskView.Words;
        var source = new SourceText(text);
        if (line < 1 || line > source.LineCount) return;
        StateHasChanged();
        await editor!.SelectAsync(source.Line(line));
    }

    private async Task MendAsync(Finding finding)
    {
        if (finding.Fix is { } fix && answer?.Input.Text == text) await editor!.ReplaceAsync(fix);
    }

    private async Task StateTermsAsync(Terminology terms) =>
        await editor!.ReplaceAsync(TermsStatement.Write(text, answer!.Terms, terms));

    private IReadOnlyList<RowLine> LinesOfSize() => RowLine.Of(Size, Results.Terms == "UK" ? Terminology.Uk : Terminology.Us);

    private string TitleOf(DeskView tab) => Words[$"View{tab}"];

    private static string PanelOf(DeskView tab) => tab == DeskView.Words ? "panel-words" : $"panel-{tab.ToString().ToLowerInvariant()}";

    private string SizeName(int place) => Results.Sizes[place].Name is { Length: > 0 } name ? name : Words["SizeNumber", place + 1];
}
