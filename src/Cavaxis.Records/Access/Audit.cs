using System.Globalization;
using System.Text.Json.Nodes;
using Cavaxis.Records.Events;

namespace Cavaxis.Records.Access;

/// <summary>How looking and signing in are kept: as events in a stream of each person.</summary>
public static class Audit
{
    /// <summary>Under this name the program writes what no person does. No one signs in with it.</summary>
    public static Identifier Program { get; } = Identifier.Of("system");

    /// <summary>A patient's record was asked for: <c>{"decision","patient","programme"}</c>; the programme where they have a role in it.</summary>
    public static EventKind Read { get; } = EventKind.Of("audit.read");

    /// <summary>The stream of what a person looked at.</summary>
    /// <param name="person">Whose.</param>
    /// <returns>Its name.</returns>
    public static StreamName StreamOf(Identifier person) => StreamName.In("audit", person);

    /// <summary>An event of the audit.</summary>
    internal static EventDraft Draft(EventKind kind, params (string Name, string Value)[] members) => new(
        kind, CanonicalJson.Of(new JsonObject(members.Select(static m => KeyValuePair.Create(m.Name, (JsonNode?)m.Value))).ToJsonString()));

    /// <summary>A moment as text.</summary>
    internal static string Text(DateTimeOffset time) => time.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
