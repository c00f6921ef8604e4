using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Json;

namespace Cavaxis.Planning.Running;

/// <summary>A change that was asked for.</summary>
/// <param name="Name">Name of the number.</param>
/// <param name="From">Value before.</param>
/// <param name="To">Value after.</param>
/// <param name="Unit">Unit.</param>
public sealed record ChangeMade(string Name, double From, double To, string Unit)
{
    /// <summary>A requested change as it is told.</summary>
    /// <param name="change">The change.</param>
    /// <returns>With name and unit.</returns>
    public static ChangeMade Of(RequestedChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ParameterDefinition definition = ParameterTable.Of(change.Parameter);
        return new ChangeMade(JsonName.Of(definition.Name), change.From, change.To, definition.Unit);
    }
}
