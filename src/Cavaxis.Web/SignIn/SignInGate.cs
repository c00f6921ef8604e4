using Cavaxis.Web.Record;

namespace Cavaxis.Web.SignIn;

/// <summary>Lets no one pass who has not signed in, once people are registered. All but the sign-in page and what it looks like stands behind it.</summary>
internal static class SignInGate
{
    /// <summary>Address of the sign-in page.</summary>
    public const string Address = "/sign-in";

    private static readonly string[] Open = [Address, "/css", "/js/room.js", "/icon.svg"];

    /// <summary>Passes a request on, or sends it to the sign-in page.</summary>
    public static async Task PassAsync(HttpContext context, RequestDelegate next)
    {
        context.RequestServices.GetRequiredService<PersonHere>().Asks(context.User);
        bool signedIn = context.User.Identity?.IsAuthenticated == true;
        if (signedIn || IsOpen(context.Request.Path) || !await context.RequestServices.GetRequiredService<WorkspaceRecord>().AsksWhoAsync())
        {
            await next(context);
            return;
        }

        bool isPage = HttpMethods.IsGet(context.Request.Method)
            && context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase)
            && !context.Request.Path.StartsWithSegments("/_blazor", StringComparison.Ordinal);
        if (isPage)
        {
            context.Response.Redirect(string.Concat(context.Request.PathBase, Address, "?to=", Uri.EscapeDataString(context.Request.Path + context.Request.QueryString)));
        }
        else
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        }
    }

    /// <summary>Where a person goes after signing in: a path of this workspace and nothing else.</summary>
    public static string Onward(string? to) =>
        to is { Length: > 0 and < 500 } && to[0] == '/' && !to.StartsWith("//", StringComparison.Ordinal) && !to.Contains('\\', StringComparison.Ordinal)
        && !to.Any(char.IsControl) && !to.StartsWith(Address, StringComparison.Ordinal) ? to : "/";

    // Static files have a fingerprint in their names, such as css/tokens.abc123.css.
    private static bool IsOpen(PathString path) => Open.Any(open => path.Equals(open, StringComparison.Ordinal) || path.StartsWithSegments(open, StringComparison.Ordinal))
        || (path.Value?.StartsWith("/js/room.", StringComparison.Ordinal) == true && path.Value.EndsWith(".js", StringComparison.Ordinal));
}
