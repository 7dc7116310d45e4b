using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Identity;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Web.Features.Accounts;

/// <summary>Where a designer comes in.</summary>
public sealed partial class SignIn
{
    private string? trouble;

    [SupplyParameterFromForm]
    private SignInForm Form { get; set; } = null!;

    /// <summary>Where to go afterwards.</summary>
    [SupplyParameterFromQuery]
    private string? Back { get; set; }

    [CascadingParameter]
    private HttpContext Http { get; set; } = null!;

    [Inject]
    private StudioSetup Setup { get; set; } = null!;

    [Inject]
    private SignInManager<Account> SignIns { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        Form ??= new SignInForm();
        if (await Setup.IsNeededAsync(Http.RequestAborted)) Navigation.NavigateTo("set-up");
        else if (Http.User.Identity is { IsAuthenticated: true }) Navigation.NavigateTo("designs");
    }

    private async Task EnterAsync()
    {
        SignInResult result = await SignIns.PasswordSignInAsync(
            Form.Email?.Trim() ?? "", Form.Password ?? "", Form.Keep, lockoutOnFailure: true);
        if (result.Succeeded) Navigation.NavigateTo(PageHere(Back));
        else trouble = Words[result.IsLockedOut ? "LockedOut" : "WrongSignIn"];
    }

    /// <summary>Only ever a page of this program: an address in a link must not lead elsewhere.</summary>
    private static string PageHere(string? back) =>
        back is ['/', not ('/' or '\\'), ..] ? back : "/designs";

    /// <summary>What was filled in.</summary>
    public sealed class SignInForm
    {
        public string? Email { get; set; }

        public string? Password { get; set; }

        public bool Keep { get; set; }
    }
}
