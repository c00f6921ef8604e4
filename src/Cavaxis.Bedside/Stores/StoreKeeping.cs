using System.Text.Json;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Faults;
using Cavaxis.Records.Store;

namespace Cavaxis.Bedside.Stores;

/// <summary>
/// Who may keep the store as a whole. A store can hold several programmes, and a backup holds all of them: so it takes an administrator of the
/// programme that founded the store, not of any programme.
/// </summary>
public static class StoreKeeping
{
    private static readonly StreamName Founding = StreamName.Of("store/founding");

    /// <summary>May a person verify, back up and restore this store?</summary>
    /// <param name="store">The store.</param>
    /// <param name="person">Who asks.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public static async Task<AccessDecision> DecideAsync(IEventStore store, Person person)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(person);
        return AccessRule.Decide(person, Verb.KeepStore, await FounderAsync(store));
    }

    /// <summary>The programme that founded a store.</summary>
    /// <param name="store">The store.</param>
    /// <returns>Its name; null where the store was not founded.</returns>
    /// <exception cref="StoreFaultException">The store cannot be read.</exception>
    public static async Task<Identifier?> FounderAsync(IEventStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        IReadOnlyList<RecordedEvent> events = (await store.ReadAsync(new StreamQuery(Founding))).Events;
        if (events.Count == 0)
        {
            return null;
        }

        using JsonDocument payload = JsonDocument.Parse(events[^1].Payload.Bytes);
        return payload.RootElement.TryGetProperty("programme", out JsonElement programme) && programme.GetString() is string text && Identifier.IsOne(text)
            ? Identifier.Of(text)
            : null;
    }
}
