using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.RateLimiting;

namespace PatternStudio.Web.Features.Testing;

/// <summary>How often strangers may knock: for each link from each address. Generous for people, useless for machines.</summary>
internal static class TesterLimits
{
    public const string Policy = "tester-pages";

    public const string SendPolicy = "tester-reports";

    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static void AddTesterLimits(this IServiceCollection services) => services.AddRateLimiter(limits =>
    {
        limits.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        limits.OnRejected = SayAsync;
        limits.AddPolicy(Policy, http => RateLimitPartition.GetFixedWindowLimiter(Key(http), _ => Of(120)));
        limits.AddPolicy(SendPolicy, http => RateLimitPartition.GetFixedWindowLimiter(Key(http), _ => Of(12)));
        // Whoever tries address after address has one key for all of them. Two hundred testers behind one address, at the same moment, are far below.
        limits.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http => http.Request.Path.StartsWithSegments("/t")
            ? RateLimitPartition.GetFixedWindowLimiter(Address(http), _ => Of(6_000))
            : RateLimitPartition.GetNoLimiter(""));
    });

    private static FixedWindowRateLimiterOptions Of(int permits) => new() { PermitLimit = permits, Window = Window };

    private static string Key(HttpContext http) => $"{Address(http)} {http.Request.RouteValues["token"]}";

    private static string Address(HttpContext http) => http.Connection.RemoteIpAddress?.ToString() ?? "";

    private static async ValueTask SayAsync(OnRejectedContext rejected, CancellationToken cancel)
    {
        HttpContext http = rejected.HttpContext;
        TesterPages.Guard(http.Response.Headers);
        http.Response.Headers.RetryAfter = "60";
        await new RazorComponentResult<BusyPage> { StatusCode = StatusCodes.Status429TooManyRequests }.ExecuteAsync(http);
    }
}
