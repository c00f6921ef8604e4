using System.Collections.Immutable;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Presets;

/// <summary>The typical circulations.</summary>
public static class CirculationPresets
{
    /// <summary>All of them, adults first.</summary>
    public static ImmutableArray<CirculationPreset> All { get; } = [.. AdultPresets.All(), .. ChildPresets.All()];

    /// <summary>The preset of a name.</summary>
    /// <param name="name">Name, case does not matter.</param>
    /// <returns>The preset.</returns>
    /// <exception cref="InputFaultException">No preset has that name.</exception>
    public static CirculationPreset Of(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return All.FirstOrDefault(preset => string.Equals(preset.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? throw new InputFaultException(new InputFault(
                FaultCode.UnknownField, "preset", name, string.Join(", ", All.Select(static preset => preset.Name)), "Use one of these names."));
    }
}
