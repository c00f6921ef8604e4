using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Faults;

namespace Cavaxis.Web.Record;

/// <summary>Turns what the record refuses into a fault that a page can show.</summary>
internal static class RecordFault
{
    /// <summary>The fault for a refusal of the store.</summary>
    /// <param name="refusal">What the store said.</param>
    /// <returns>An exception to throw in its place.</returns>
    public static InputFaultException Of(StoreFaultException refusal) => new(new InputFault(
        FaultCode.UnreadableFile, "store of records", refusal.Fault.Found, refusal.Fault.Accepted, refusal.Fault.Remedy));

    /// <summary>The fault for a decision that is no grant.</summary>
    /// <param name="decision">The decision.</param>
    /// <param name="id">Identifier asked for.</param>
    /// <returns>An exception to throw.</returns>
    public static InputFaultException Of(AccessDecision decision, string id) => decision == AccessDecision.NotAllowed
        ? new(new InputFault(FaultCode.NotAChoice, "role", "yours", "a role that allows this", "Ask someone with that role, or an administrator of the programme."))
        : Shelf.ShelfFault.NoPatient(id);

    /// <summary>The fault for someone who is no longer signed in.</summary>
    /// <returns>An exception to throw.</returns>
    public static InputFaultException SignedOut() => new(new InputFault(
        FaultCode.NotFound, "sign-in", "ended", "a person who is signed in", "Sign in again; what was saved is kept, and what stands in an open field can be saved then."));

    /// <summary>The fault for events that are not those that were kept.</summary>
    /// <param name="places">Their places in the store.</param>
    /// <returns>An exception to throw.</returns>
    public static InputFaultException Spoiled(IReadOnlyList<long> places) => new(new InputFault(
        FaultCode.UnreadableFile, "store of records", FormattableString.Invariant($"damaged or altered at {string.Join(", ", places.Take(5))}"), "events as they were written",
        "Do not go on with this record: run './run record verify', and restore a backup or recover what holds."));

    /// <summary>Does something, with refusals of the store as faults.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="work">What to do.</param>
    /// <returns>What came of it.</returns>
    public static async Task<T> InAsync<T>(Func<Task<T>> work)
    {
        try
        {
            return await work();
        }
        catch (StoreFaultException refusal)
        {
            throw Of(refusal);
        }
    }
}
