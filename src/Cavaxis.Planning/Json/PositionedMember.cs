namespace Cavaxis.Planning.Json;

/// <summary>One field of a JSON object.</summary>
/// <param name="Name">Name of the field, escapes resolved.</param>
/// <param name="Place">Where the name stands.</param>
/// <param name="Value">The value.</param>
public sealed record PositionedMember(string Name, TextPlace Place, PositionedValue Value);
