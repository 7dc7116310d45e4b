using Microsoft.AspNetCore.Components;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;
using PatternStudio.Web.Features.Tour;
using PatternStudio.Web.Hosting;
using PatternStudio.Web.Shell;

namespace PatternStudio.Web.Features.Settings;

/// <summary>How the reader likes to read.</summary>
public sealed partial class SettingsPage
{
    private Caller caller = null!;
    private bool known;
    private LengthUnit lengths;
    private DecimalSign decimals;
    private DateForm dates;
    private bool leftHanded;
    private string name = "";
    private IReadOnlyList<FieldMessage> messages = [];

    [SupplyParameterFromQuery]
    private bool Kept { get; set; }

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private PreferenceBook Book { get; set; } = null!;

    [Inject]
    private People People { get; set; } = null!;

    [Inject]
    private Guide Guide { get; set; } = null!;

    [Inject]
    private Moments Moments { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        caller = await SignedIn.CallerAsync();
        name = await People.NameOfAsync(caller);
        Preferences kept = await Book.OfAsync(caller.AccountId);
        (lengths, decimals, dates, leftHanded, known) = (kept.Lengths, kept.Decimals, kept.Dates, kept.LeftHanded, true);
    }

    /// <summary>The page comes anew: what is open was said in the old manner.</summary>
    private async Task KeepAsync()
    {
        Outcome called = await People.CallAsync(caller, name);
        messages = called.Messages;
        if (!called.Succeeded) return;
        Outcome outcome = await Book.ChangeAsync(caller, kept => kept with { Lengths = lengths, Decimals = decimals, Dates = dates, LeftHanded = leftHanded });
        if (outcome.Succeeded) Navigation.NavigateTo("settings?kept=true", forceLoad: true);
        else messages = outcome.Messages;
    }
}
