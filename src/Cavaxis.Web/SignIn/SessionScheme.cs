using System.Security.Claims;
using System.Text.Encodings.Web;
using Cavaxis.Records.Access;
using Cavaxis.Web.Record;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace Cavaxis.Web.SignIn;

/// <summary>Reads who is signed in from the cookie. The cookie holds chance alone; what it proves stands in the record.</summary>
/// <param name="options">Options of the scheme.</param>
/// <param name="logger">Log; the token never goes there.</param>
/// <param name="encoder">Encoder of addresses.</param>
/// <param name="record">The record.</param>
internal sealed class SessionScheme(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, WorkspaceRecord record)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    /// <summary>Name of the scheme.</summary>
    public const string Name = "session";

    /// <summary>Name of the cookie.</summary>
    public const string Cookie = "cavaxis-session";

    /// <summary>Claim that holds the proof; it stays in the server's memory.</summary>
    public const string TokenClaim = "token";

    /// <summary>A token is 43 characters; whatever is much longer is not looked up.</summary>
    private const int LongestToken = 100;

    /// <summary>How the cookie is set: not for scripts, not across sites, over TLS alone where there is TLS, gone with the browser.</summary>
    public static CookieOptions CookieOptions(HttpRequest request) => new()
    {
        HttpOnly = true,
        IsEssential = true,
        SameSite = SameSiteMode.Strict,
        Secure = request.IsHttps,
        Path = request.PathBase.HasValue ? request.PathBase.Value : "/",
    };

    /// <inheritdoc/>
    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (Request.Cookies[Cookie] is not { Length: > 0 and <= LongestToken } token || await record.SignIn.WhoAsync(token) is not Person person)
        {
            return AuthenticateResult.NoResult();
        }

        ClaimsIdentity identity = new([new Claim(ClaimTypes.NameIdentifier, person.Id.Text), new Claim(TokenClaim, token)], Name);
        return AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), Name));
    }
}
