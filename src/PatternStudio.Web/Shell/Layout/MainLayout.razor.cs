using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;
using PatternStudio.Studio.Accounts;
using PatternStudio.Web.Hosting;

namespace PatternStudio.Web.Shell.Layout;

/// <summary>The frame of every page of a signed-in designer.</summary>
public sealed partial class MainLayout
{
    private ElementReference content;
    private ErrorBoundary? boundary;
    private string studio = "";
    private bool dark;

    [CascadingParameter]
    private SchemeChoice? Scheme { get; set; }

    [Inject]
    private SignedIn SignedIn { get; set; } = null!;

    [Inject]
    private Memberships Memberships { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    /// <summary>True on the list of designs, where everybody arrives.</summary>
    private bool IsHome => Navigation.ToBaseRelativePath(Navigation.Uri).Split('?')[0] is "" or "designs";

    protected override async Task OnInitializedAsync()
    {
        dark = Scheme?.Dark ?? false;
        studio = await Memberships.StudioNameAsync(await SignedIn.CallerAsync()) ?? "";
    }

    /// <summary>A page that failed must not keep the next one from showing.</summary>
    protected override void OnParametersSet() => boundary?.Recover();

    private async Task SwitchSchemeAsync()
    {
        dark = !dark;
        await Browser.InvokeVoidAsync("studioScheme.choose", dark ? "dark" : "light");
    }

    private async Task FocusContentAsync() => await content.FocusAsync();
}
