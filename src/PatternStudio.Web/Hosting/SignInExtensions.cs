using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using PatternStudio.Studio.Accounts;

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

    private static void LockAfterTenWrongPasswords(IdentityOptions identity)
    {
        identity.Lockout.AllowedForNewUsers = true;
        identity.Lockout.MaxFailedAccessAttempts = 10;
        identity.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(5);
    }
}
