using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using Cavaxis.Planning.Search;
using Cavaxis.Records.Access;
using Cavaxis.Records.Faults;
using Cavaxis.Records.SignIn;
using Cavaxis.Web.Record;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;

namespace Cavaxis.Web.SignIn;

/// <summary>Signing in and out: two plain pages without script, so that nothing of the workspace runs before someone is known.</summary>
internal static class SignInPages
{
    private const string SignOutAddress = "/sign-out";

    /// <summary>Maps the addresses.</summary>
    public static void MapSignIn(this WebApplication app)
    {
        app.MapGet(SignInGate.Address, static (HttpContext context, IAntiforgery forgery, string? to) => Page(context, forgery, "Sign in", Form(to, string.Empty), string.Empty));
        app.MapPost(SignInGate.Address, SignInAsync).RequireRateLimiting(SignInLimit.Policy);
        app.MapGet(SignOutAddress, SignOutPageAsync);
        app.MapPost(SignOutAddress, SignOutAsync);
    }

    private static async Task<IResult> SignInAsync(
        HttpContext context, IAntiforgery forgery, WorkspaceRecord record, [FromForm] string? name, [FromForm] string? password, [FromForm] string? to)
    {
        try
        {
            switch (await record.SignIn.SignInAsync(name ?? string.Empty, password ?? string.Empty))
            {
                case SignedIn signed:
                    context.Response.Cookies.Append(SessionScheme.Cookie, signed.Token, SessionScheme.CookieOptions(context.Request));
                    return Results.Redirect(context.Request.PathBase + SignInGate.Onward(to));
                case SignInRefused { LockedUntil: DateTimeOffset until }:
                    return Page(context, forgery, "Sign in", Form(to, name), string.Create(
                        CultureInfo.InvariantCulture, $"Too many failures: this name is locked until {until.ToLocalTime():HH:mm}."), StatusCodes.Status401Unauthorized);
                default:
                    return Page(context, forgery, "Sign in", Form(to, name), "Name and password do not belong together.", StatusCodes.Status401Unauthorized);
            }
        }
        catch (StoreFaultException refusal)
        {
            return Page(context, forgery, "Sign in", Form(to, name), refusal.Fault.ToString(), StatusCodes.Status503ServiceUnavailable);
        }
    }

    private static async Task<IResult> SignOutPageAsync(HttpContext context, IAntiforgery forgery, PersonHere here)
    {
        Person person = await here.NowAsync();
        return Page(context, forgery, "Sign out", $"""
            <p>Signed in as {Encoded(person.Name)} ({Encoded(person.Id.Text)}). What was saved is kept.</p>
            <p class="onward"><button type="submit" class="button-main">Sign out</button> <a class="button" href="./">Stay</a></p>
            """, string.Empty);
    }

    private static async Task<IResult> SignOutAsync(HttpContext context, IAntiforgery forgery, WorkspaceRecord record)
    {
        await forgery.ValidateRequestAsync(context);
        if (context.User.FindFirst(SessionScheme.TokenClaim)?.Value is string token)
        {
            await record.SignIn.SignOutAsync(token);
        }

        context.Response.Cookies.Delete(SessionScheme.Cookie, SessionScheme.CookieOptions(context.Request));
        return Results.Redirect(context.Request.PathBase + SignInGate.Address);
    }

    private static string Form(string? to, string? name) => $"""
        <input type="hidden" name="to" value="{Encoded(SignInGate.Onward(to))}" />
        <p class="sign-field"><label for="name">Name</label> <input id="name" name="name" type="text" autocomplete="username" autocapitalize="none" spellcheck="false" maxlength="64" required value="{Encoded(name ?? string.Empty)}" /></p>
        <p class="sign-field"><label for="password">Password</label> <input id="password" name="password" type="password" autocomplete="current-password" maxlength="256" required /></p>
        <p class="onward"><button type="submit" class="button-main">Sign in</button></p>
        <p class="hint">No name here, or the password is lost? An administrator of your programme sets a new one.</p>
        """;

    private static IResult Page(HttpContext context, IAntiforgery forgery, string title, string body, string trouble, int status = StatusCodes.Status200OK)
    {
        AntiforgeryTokenSet tokens = forgery.GetAndStoreTokens(context);
        string alert = trouble.Length == 0 ? string.Empty : $"""<p class="trouble" role="alert">{Encoded(trouble)}</p>""";
        return Results.Content($"""
            <!DOCTYPE html>
            <html lang="en-GB">
            <head>
                <meta charset="utf-8" />
                <meta name="viewport" content="width=device-width, initial-scale=1" />
                <meta name="color-scheme" content="dark light" />
                <title>{title} · Cavaxis</title>
                <base href="{Encoded(context.Request.PathBase + "/")}" />
                <link rel="icon" type="image/svg+xml" href="icon.svg" />
                <link rel="stylesheet" href="css/tokens.css" />
                <link rel="stylesheet" href="css/frame.css" />
                <link rel="stylesheet" href="css/pages.css" />
                <script src="js/room.js"></script>
            </head>
            <body>
                <header class="top"><span class="mark">Cavaxis</span></header>
                <main id="main" class="work alone">
                    <h1>{title}</h1>
                    {alert}
                    <form method="post" class="sign">
                        <input type="hidden" name="{tokens.FormFieldName}" value="{Encoded(tokens.RequestToken!)}" />
                        {body}
                    </form>
                </main>
                <footer class="caution" aria-label="Caution"><p class="caution-words">{Encoded(Planner.Caution)}</p></footer>
            </body>
            </html>
            """, "text/html", Encoding.UTF8, status);
    }

    private static string Encoded(string text) => HtmlEncoder.Default.Encode(text);
}
