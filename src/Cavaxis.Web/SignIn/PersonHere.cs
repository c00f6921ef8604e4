using System.Security.Claims;
using Cavaxis.Records.Access;
using Cavaxis.Web.Record;
using Microsoft.AspNetCore.Components.Authorization;

namespace Cavaxis.Web.SignIn;

/// <summary>
/// Who works in this window or sends this request. The proof of the sign-in is asked for again each time, so that signing out, closing out or a new
/// password ends work in windows that are open.
/// </summary>
/// <param name="record">The record.</param>
/// <param name="states">Who opened the window.</param>
internal sealed class PersonHere(WorkspaceRecord record, AuthenticationStateProvider states) : IPersonHere
{
    private ClaimsPrincipal? asking;

    /// <summary>Says who sends the request; a window that stays open says so itself.</summary>
    public void Asks(ClaimsPrincipal principal) => asking = principal;

    /// <inheritdoc/>
    public async Task<Person> NowAsync()
    {
        ClaimsPrincipal principal = asking ?? (await states.GetAuthenticationStateAsync()).User;
        if (principal.FindFirst(SessionScheme.TokenClaim)?.Value is string token)
        {
            return await record.SignIn.WhoAsync(token) ?? throw RecordFault.SignedOut();
        }

        return await record.AsksWhoAsync() ? throw RecordFault.SignedOut() : WorkspaceRecord.AtThisMachine;
    }
}
