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

    protected override async Task OnInitializedAsync()
    {
        Outcome<Guid> page = await Corrections.AddressAsync(await SignedIn.CallerAsync(), DesignId);
        address = page.Succeeded ? $"corrections/{page.Value}" : null;
        await ListAsync();
    }

    private async Task AddAsync()
    {
        Outcome<Guid> added = await Corrections.AddAsync(await SignedIn.CallerAsync(), DesignId, new CorrectionDetails(Moments.Today, Versions[0].Number, words));
        wrong = added.Succeeded ? null : added.ToString();
        if (!added.Succeeded) return;
        words = "";
        await ListAsync();
    }

    private async Task RemoveAsync(Guid id)
    {
        await Corrections.RemoveAsync(await SignedIn.CallerAsync(), id);
        await ListAsync();
    }

    private async Task ListAsync() => kept = await Corrections.ListAsync(await SignedIn.CallerAsync(), DesignId);
}
