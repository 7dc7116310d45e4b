using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Web.Hosting;

/// <summary>
/// A page may stay open for days. Every half hour it is checked that the account is still there and that its password was not changed meanwhile.
/// </summary>
internal sealed class AccountStillValid(ILoggerFactory loggers, IServiceScopeFactory scopes, IOptions<IdentityOptions> identity)
    : RevalidatingServerAuthenticationStateProvider(loggers)
{
    protected override TimeSpan RevalidationInterval => TimeSpan.FromMinutes(30);

    protected override async Task<bool> ValidateAuthenticationStateAsync(AuthenticationState authenticationState, CancellationToken cancellationToken)
    {
        await using AsyncServiceScope scope = scopes.CreateAsyncScope();
        var accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        Account? account = await accounts.GetUserAsync(authenticationState.User);
        return account is not null
            && authenticationState.User.FindFirstValue(identity.Value.ClaimsIdentity.SecurityStampClaimType)
                == await accounts.GetSecurityStampAsync(account);
    }
}
