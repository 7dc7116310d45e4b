using Microsoft.Extensions.DependencyInjection;
using PatternStudio.Studio.Data;

namespace PatternStudio.Studio.Accounts;

internal static class AccountExtensions
{
    /// <summary>Accounts are known by their e-mail address. A password needs length, not ornament.</summary>
    public static void AddAccounts(this IServiceCollection services) =>
        services.AddIdentityCore<Account>(options =>
        {
            options.User.RequireUniqueEmail = true;
            options.User.AllowedUserNameCharacters = "";
            options.Password.RequiredLength = SetupForm.PasswordLeast;
            options.Password.RequiredUniqueChars = SetupForm.PasswordLeastDifferent;
            options.Password.RequireDigit = false;
            options.Password.RequireLowercase = false;
            options.Password.RequireUppercase = false;
            options.Password.RequireNonAlphanumeric = false;
        }).AddEntityFrameworkStores<StudioDbContext>();
}
