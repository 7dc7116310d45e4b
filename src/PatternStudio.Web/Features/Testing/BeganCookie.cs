using System.Globalization;

namespace PatternStudio.Web.Features.Testing;

/// <summary>
/// Which version a tester began with, on her own device: where she comes by the link for all there is no other place, and where she says so herself it counts more than what her link
/// remembers. The cookie goes to her link's own pages and nowhere else; without it she can say so again.
/// </summary>
internal static class BeganCookie
{
    private const string Name = "began";

    public static int? Of(HttpContext http) =>
        int.TryParse(http.Request.Cookies[Name], NumberStyles.None, CultureInfo.InvariantCulture, out int version) ? version : null;

    public static void Keep(HttpContext http, string token, int version)
    {
        if (Of(http) == version) return;
        http.Response.Cookies.Append(Name, version.ToString(CultureInfo.InvariantCulture), new CookieOptions
        {
            Path = $"/t/{token}", HttpOnly = true, Secure = http.Request.IsHttps, SameSite = SameSiteMode.Lax, MaxAge = TimeSpan.FromDays(731),
        });
    }
}
