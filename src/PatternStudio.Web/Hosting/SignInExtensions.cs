using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.AspNetCore.Identity;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Data;

namespace PatternStudio.Web.Hosting;

/// <summary>Signing in with a cookie.</summary>
internal static class SignInExtensions
{
    public static void AddSignIn(this IServiceCollection services)
    {
        services.AddAuthentication(IdentityConstants.ApplicationScheme).AddIdentityCookies();
        services.ConfigureApplicationCookie(NameAndBound);
        new IdentityBuilder(typeof(Account), services).AddSignInManager().AddDefaultTokenProviders();
        services.Configure<IdentityOptions>(LockAfterTenWrongPasswords);
        services.AddAuthorization();
        services.AddOptions<KeyManagementOptions>().Configure<Store, ILoggerFactory>(KeepKeysWithTheData);
        services.Configure<DataProtectionOptions>(BelongToTheStudioNotToItsFolder);
        services.AddCascadingAuthenticationState();
        services.AddScoped<AuthenticationStateProvider, AccountStillValid>();
        services.AddScoped<SignedIn>();
    }

    private static void NameAndBound(CookieAuthenticationOptions cookie)
    {
        cookie.LoginPath = "/sign-in";
        cookie.LogoutPath = "/sign-out";
        cookie.AccessDeniedPath = "/sign-in";
        cookie.ReturnUrlParameter = "back";
        cookie.Cookie.Name = "studio";
        cookie.Cookie.SameSite = SameSiteMode.Lax;
        cookie.Cookie.HttpOnly = true;
        cookie.ExpireTimeSpan = TimeSpan.FromDays(30);
        cookie.SlidingExpiration = true;
    }

    /// <summary>So that a studio that moves to another computer with its data folder keeps everybody signed in.</summary>
    private static void KeepKeysWithTheData(KeyManagementOptions keys, Store store, ILoggerFactory loggers) =>
        keys.XmlRepository = new FileSystemXmlRepository(new DirectoryInfo(Path.Combine(store.Folder, "keys")), loggers);

    /// <summary>Else what was protected (who is signed in, a form half filled in) could only be read where the program lies in the same folder.</summary>
    private static void BelongToTheStudioNotToItsFolder(DataProtectionOptions protection) => protection.ApplicationDiscriminator = "Pattern Studio";

    private static void LockAfterTenWrongPasswords(IdentityOptions identity)
    {
        identity.Lockout.AllowedForNewUsers = true;
        identity.Lockout.MaxFailedAccessAttempts = 10;
        identity.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(5);
    }
}
