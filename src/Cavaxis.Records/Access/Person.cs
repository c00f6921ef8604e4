using System.Collections.Immutable;
using System.Text.Json;
using Cavaxis.Records.Events;

namespace Cavaxis.Records.Access;

/// <summary>Someone who signs in, as the events about them tell.</summary>
/// <param name="Id">Name to sign in with, in small letters; stands in every event that they write.</param>
/// <param name="Name">Name for other people.</param>
/// <param name="Roles">Role in each programme.</param>
/// <param name="IsActive">False once they were closed out.</param>
/// <param name="PasswordFingerprint">SHA-256 of the kept password hash, so that one put in past this program is found; null where none was set.</param>
/// <param name="Version">Number of events about them.</param>
public sealed record Person(
    Identifier Id, string Name, ImmutableSortedDictionary<string, Role> Roles, bool IsActive, string? PasswordFingerprint, long Version)
{
    /// <summary>Area of the streams about people.</summary>
    public const string Area = "person";

    /// <summary>Someone was registered: <c>{"name"}</c>.</summary>
    public static EventKind Registered { get; } = EventKind.Of("person.registered");

    /// <summary>A role was given: <c>{"programme","role"}</c>; it takes the place of an earlier one there.</summary>
    public static EventKind RoleGiven { get; } = EventKind.Of("person.role-given");

    /// <summary>A role was ended: <c>{"programme"}</c>.</summary>
    public static EventKind RoleEnded { get; } = EventKind.Of("person.role-ended");

    /// <summary>A password was set: <c>{"fingerprint"}</c>.</summary>
    public static EventKind PasswordSet { get; } = EventKind.Of("person.password-set");

    /// <summary>Someone was closed out and can no longer sign in.</summary>
    public static EventKind ClosedOut { get; } = EventKind.Of("person.closed-out");

    /// <summary>A lock after failures to sign in was taken off.</summary>
    public static EventKind Unlocked { get; } = EventKind.Of("person.unlocked");

    /// <summary>The stream about a person.</summary>
    /// <param name="id">Whose.</param>
    /// <returns>Its name.</returns>
    public static StreamName StreamOf(Identifier id) => StreamName.In(Area, id);

    /// <summary>Their role in a programme; null where they have none or were closed out.</summary>
    /// <param name="programme">The programme.</param>
    /// <returns>The role.</returns>
    public Role? RoleIn(Identifier programme)
    {
        ArgumentNullException.ThrowIfNull(programme);
        return IsActive && Roles.TryGetValue(programme.Text, out Role role) ? role : null;
    }

    /// <summary>The person that the events of one stream tell of.</summary>
    /// <param name="events">The events in order, from the first.</param>
    /// <returns>The person; null where the first does not register one.</returns>
    public static Person? Of(IEnumerable<RecordedEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        Person? person = null;
        foreach (RecordedEvent one in events)
        {
            using JsonDocument payload = JsonDocument.Parse(one.Payload.Bytes);
            person = one.Kind == Registered
                ? new Person(one.Stream.Id, Text(payload, "name"), ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal), true, null, one.Sequence)
                : person?.After(one, payload);
        }

        return person;
    }

    private Person After(RecordedEvent one, JsonDocument payload)
    {
        Person next = this with { Version = one.Sequence };
        return one.Kind.Text switch
        {
            _ when one.Kind == RoleGiven => Enum.TryParse(Text(payload, "role"), out Role role) && Enum.IsDefined(role)
                ? next with { Roles = Roles.SetItem(Text(payload, "programme"), role) }
                : next,
            _ when one.Kind == RoleEnded => next with { Roles = Roles.Remove(Text(payload, "programme")) },
            _ when one.Kind == PasswordSet => next with { PasswordFingerprint = Text(payload, "fingerprint") },
            _ when one.Kind == ClosedOut => next with { IsActive = false },
            _ => next,
        };
    }

    private static string Text(JsonDocument payload, string name) =>
        payload.RootElement.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String ? value.GetString()! : string.Empty;
}
