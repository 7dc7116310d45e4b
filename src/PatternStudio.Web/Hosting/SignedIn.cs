using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;
using PatternStudio.Studio;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Web.Hosting;

/// <summary>Who sits before the page: looked up once for each open page.</summary>
public sealed class SignedIn(AuthenticationStateProvider authentication, Memberships memberships)
{
    private Caller? caller;

    /// <summary>The caller for every operation of the studio.</summary>
    /// <exception cref="InvalidOperationException">Nobody is signed in, or the account is a member of no studio: the page should not have been shown.</exception>
    public async Task<Caller> CallerAsync() => caller ??= await FindAsync();

    private async Task<Caller> FindAsync()
    {
        AuthenticationState state = await authentication.GetAuthenticationStateAsync();
        return Guid.TryParse(state.User.FindFirstValue(ClaimTypes.NameIdentifier), out Guid account)
            && await memberships.CallerAsync(account) is { } found
            ? found
            : throw new InvalidOperationException("Nobody is signed in to a studio here.");
    }
}
