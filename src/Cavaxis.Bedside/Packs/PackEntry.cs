using System.Text.Json.Nodes;

namespace Cavaxis.Bedside.Packs;

/// <summary>Something that happened, without identity.</summary>
/// <param name="Kind">What, as in the record.</param>
/// <param name="MinutesFromStart">When, whole minutes from the start of support; negative before it.</param>
/// <param name="Payload">The particulars, cleaned.</param>
public sealed record PackEntry(string Kind, long MinutesFromStart, JsonObject Payload);
