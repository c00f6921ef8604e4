using System.Text.Json.Nodes;

namespace Cavaxis.Web.Desk;

/// <summary>A field that another window changed while it was being changed here. Nothing is lost: both values are told, and theirs is saved.</summary>
/// <param name="Path">Path of the field; empty for the case as a whole.</param>
/// <param name="Theirs">The value that the other window saved; null for none.</param>
/// <param name="Mine">The value that was to be saved here; null for none.</param>
public sealed record CaseConflict(string Path, JsonNode? Theirs, JsonNode? Mine)
{
    /// <summary>Whether two conflicts ask the same: the same field with the same two values, found at different times.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True where a decision on one is a decision on the other.</returns>
    public bool AsksTheSameAs(CaseConflict other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Path == other.Path && JsonNode.DeepEquals(Theirs, other.Theirs) && JsonNode.DeepEquals(Mine, other.Mine);
    }
}
