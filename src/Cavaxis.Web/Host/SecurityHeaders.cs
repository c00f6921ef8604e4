namespace Cavaxis.Web.Host;

/// <summary>Headers that keep foreign content out of the workspace and the workspace out of foreign pages.</summary>
internal static class SecurityHeaders
{
    // 'self' covers the web socket of the same origin. No inline script or style anywhere but in a report, which is one file by design.
    private const string Page =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; frame-src 'self'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    private const string Report =
        "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

    /// <summary>Adds them to an answer.</summary>
    public static Task AddAsync(HttpContext context, RequestDelegate next)
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments("/report", StringComparison.Ordinal) ? Report : Page;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        if (!context.Request.Path.StartsWithSegments("/_framework", StringComparison.Ordinal) && context.Request.Path.Value?.Contains('.', StringComparison.Ordinal) != true)
        {
            headers.CacheControl = "no-store";
        }

        return next(context);
    }
}
