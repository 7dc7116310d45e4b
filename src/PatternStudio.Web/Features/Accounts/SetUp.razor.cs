using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Identity;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Web.Features.Accounts;

/// <summary>The first page of a new studio.</summary>
public sealed partial class SetUp
{
    private static readonly string[] Fields = ["studioName", "email", "password"];
    private IReadOnlyList<FieldMessage> messages = [];

    [SupplyParameterFromForm]
    private SetUpForm Form { get; set; } = null!;

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
        Form ??= new SetUpForm { LoadSample = !HttpMethods.IsPost(Http.Request.Method) };
        if (!await Setup.IsNeededAsync(Http.RequestAborted)) Navigation.NavigateTo("sign-in");
    }

    private async Task OpenAsync()
    {
        Outcome<Caller> opened = await Setup.CreateAsync(
            Form.StudioName ?? "", Form.Email ?? "", Form.Password ?? "", Form.LoadSample, Http.RequestAborted);
        messages = opened.Messages;
        if (opened.Value is not { } caller || !opened.Succeeded) return;
        Account? account = await SignIns.UserManager.FindByIdAsync(caller.AccountId.ToString());
        await SignIns.SignInAsync(account!, isPersistent: true);
        Navigation.NavigateTo("designs");
    }

    private string? Wrong(string field) => messages.FirstOrDefault(message => message.Field == field)?.Message;

    /// <summary>What was filled in.</summary>
    public sealed class SetUpForm
    {
        public string? StudioName { get; set; }

        public string? Email { get; set; }

        public string? Password { get; set; }

        public bool LoadSample { get; set; }
    }
}
