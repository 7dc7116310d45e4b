using System.Globalization;
using Microsoft.AspNetCore.Components;
using PatternStudio.Craft.Reading;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>Plans a round, or changes one.</summary>
public sealed partial class RoundForm
{
    private static readonly string[] Fields = ["Version", "Ends", "Testers", "Sizes", "Asked", "Note"];
    private static readonly AskedFor[] Single = [.. Enum.GetValues<AskedFor>().Where(what => int.PopCount((int)what) == 1)];
    private readonly HashSet<int> wanted = [0];
    private IReadOnlyList<FieldMessage> wrong = [];
    private IReadOnlyList<string> sizes = [""];
    private int version;
    private DateOnly opens;
    private DateOnly ends;
    private string testers = "5";
    private AskedFor asked = AskedFor.Everything;
    private bool showsChart = true;
    private string note = "";

    [Parameter, EditorRequired]
    public OpenDesign Design { get; set; } = null!;

    /// <summary>The newest first.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<VersionSummary> Versions { get; set; } = [];

    /// <summary>The round that is changed; null for a new one.</summary>
    [Parameter]
    public RoundBook? Kept { get; set; }

    /// <summary>Tells the round that was kept; null where nothing was.</summary>
    [Parameter]
    public EventCallback<Guid?> Done { get; set; }

    [Inject]
    private TestRounds Rounds { get; set; } = null!;

    [Inject]
    private DesignVersions DesignVersions { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private Moments Moments { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        if (Kept?.Plan is { } plan)
        {
            (version, opens, ends, asked, showsChart, note) = (plan.Version, plan.Opens, plan.Ends, plan.Asked, plan.ShowsChart, plan.Note);
            testers = plan.Testers.ToString(CultureInfo.InvariantCulture);
        }
        else
        {
            (version, opens, ends) = (Design.Version, Moments.Today, Moments.Today.AddDays(21));
        }

        await ReadSizesAsync();
        wanted.Clear();
        wanted.UnionWith(Kept?.Plan.Sizes ?? Enumerable.Range(0, sizes.Count));
    }

    private async Task ReadSizesAsync()
    {
        VersionText? text = await DesignVersions.FindAsync(await SignedIn.CallerAsync(), Design.Id, version);
        sizes = text is null ? [""] : [.. PatternReader.Read(text.Text).Sizes];
        wanted.RemoveWhere(size => size >= sizes.Count);
        if (sizes.Count == 1) wanted.Add(0);
    }

    private void Want(int size, ChangeEventArgs change)
    {
        if (change.Value is true) wanted.Add(size);
        else wanted.Remove(size);
    }

    private void Ask(AskedFor what, ChangeEventArgs change) => asked = change.Value is true ? asked | what : asked & ~what;

    private async Task KeepAsync()
    {
        TypedNumber number = Typed.Whole(testers);
        var plan = new RoundPlan(version, opens, ends, number.Trouble is null ? (int)number.Value : 0, [.. wanted.Order()], asked, showsChart, note);
        Caller caller = await SignedIn.CallerAsync();
        if (Kept is null)
        {
            Outcome<Guid> begun = await Rounds.BeginAsync(caller, Design.Id, plan);
            wrong = begun.Messages;
            if (begun.Succeeded) await Done.InvokeAsync(begun.Value);
        }
        else
        {
            Outcome changed = await Rounds.ChangeAsync(caller, Kept.Id, plan);
            wrong = changed.Messages;
            if (changed.Succeeded) await Done.InvokeAsync(Kept.Id);
        }
    }
}
