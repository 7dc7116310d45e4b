using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Rounds;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Testing.Designers;

/// <summary>Corrections of a published design, and the address under which everybody reads them.</summary>
public sealed partial class CorrectionsPanel
{
    private IReadOnlyList<KeptCorrection> kept = [];
    private string? address;
    private string? wrong;
    private string words = "";
    private int version;
    private Guid? changing;
    private string changedWords = "";
    private int changedVersion;
    private string? wrongChange;

    [Parameter, EditorRequired]
    public Guid DesignId { get; set; }

    /// <summary>The newest first: a correction is right from it on.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<VersionSummary> Versions { get; set; } = [];

    [Inject]
    private Corrections Corrections { get; set; } = null!;

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private Moments Moments { get; set; } = null!;

    /// <summary>The latest that has a name is what was sent out; where none has, the latest.</summary>
    private int Usual => (Versions.FirstOrDefault(known => known.Name.Length > 0) ?? Versions[0]).Number;

    private RenderFragment VersionChoices => builder =>
    {
        foreach (VersionSummary known in Versions)
        {
            builder.OpenElement(0, "option");
            builder.AddAttribute(1, "value", known.Number);
            builder.AddContent(2, known.Name.Length > 0 ? Words["VersionNamed", known.Number, known.Name] : Words["VersionN", known.Number]);
            builder.CloseElement();
        }
    };

    protected override async Task OnInitializedAsync()
    {
        version = Usual;
        Outcome<Guid> page = await Corrections.AddressAsync(await SignedIn.CallerAsync(), DesignId);
        address = page.Succeeded ? $"corrections/{page.Value}" : null;
        await ListAsync();
    }

    private async Task AddAsync()
    {
        Outcome<Guid> added = await Corrections.AddAsync(await SignedIn.CallerAsync(), DesignId, new CorrectionDetails(Moments.Today, version, words));
        wrong = added.Succeeded ? null : added.ToString();
        if (!added.Succeeded) return;
        words = "";
        await ListAsync();
    }

    private void BeginChange(KeptCorrection correction) =>
        (changing, changedWords, changedVersion, wrongChange) = (correction.Id, correction.Details.Words, correction.Details.Version, null);

    private async Task ChangeAsync()
    {
        Outcome changed = await Corrections.ChangeAsync(await SignedIn.CallerAsync(), changing!.Value, new CorrectionDetails(Moments.Today, changedVersion, changedWords));
        wrongChange = changed.Succeeded ? null : changed.ToString();
        if (!changed.Succeeded) return;
        changing = null;
        await ListAsync();
    }

    private async Task WithdrawAsync(Guid id)
    {
        await Corrections.WithdrawAsync(await SignedIn.CallerAsync(), id, Moments.Today);
        await ListAsync();
    }

    private async Task ListAsync() => kept = await Corrections.ListAsync(await SignedIn.CallerAsync(), DesignId);
}
