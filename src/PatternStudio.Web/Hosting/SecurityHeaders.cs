namespace PatternStudio.Web.Hosting;

/// <summary>Tells browsers what these pages may do: nothing that comes from elsewhere.</summary>
internal static class SecurityHeaders
{
    /// <summary>Inline styles are allowed since the component kit writes its theme and positions as such; scripts come from files only.</summary>
    private const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self'; "
        + "connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static void UseSecurityHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        return next(context);
    });
}
