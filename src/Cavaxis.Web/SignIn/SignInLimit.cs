using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace Cavaxis.Web.SignIn;

/// <summary>How often one address may try to sign in. The record locks a name; this slows an address that tries many names.</summary>
internal static class SignInLimit
{
    /// <summary>Name of the policy.</summary>
    public const string Policy = "sign-in";

    /// <summary>Tries in a minute from one address: a ward behind one address signs in at the change of shift (assumption of this project).</summary>
    public const int TriesPerMinute = 60;

    /// <summary>Sets it up.</summary>
    public static void Configure(RateLimiterOptions options)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.AddPolicy(Policy, static context => RateLimitPartition.GetFixedWindowLimiter(
            context.Connection.RemoteIpAddress?.ToString() ?? "unknown",
            static _ => new FixedWindowRateLimiterOptions { PermitLimit = TriesPerMinute, Window = TimeSpan.FromMinutes(1), QueueLimit = 0 }));
    }
}
