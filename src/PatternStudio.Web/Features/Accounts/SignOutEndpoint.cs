using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Identity;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Web.Features.Accounts;

/// <summary>Takes the cookie away.</summary>
internal static class SignOutEndpoint
{
    public static void MapSignOut(this IEndpointRouteBuilder routes) => routes.MapPost("/signed-out", LeaveAsync);

    private static async Task<IResult> LeaveAsync(HttpContext http, IAntiforgery antiforgery, SignInManager<Account> signIns)
    {
        if (!await antiforgery.IsRequestValidAsync(http)) return TypedResults.BadRequest();
        await signIns.SignOutAsync();
        return TypedResults.LocalRedirect("/sign-in");
    }
}
