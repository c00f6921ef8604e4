using System.Collections.Immutable;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Presets;

/// <summary>A typical circulation to start from: a body mass and the numbers that differ from the resting adult scaled to it.</summary>
/// <param name="Name">Name as it is written on the command line.</param>
/// <param name="Meaning">What it stands for, in plain words.</param>
/// <param name="MassKg">Body mass, kg.</param>
/// <param name="Changes">Numbers that differ, each with its reason.</param>
public sealed record CirculationPreset(string Name, string Meaning, double MassKg, ImmutableArray<PresetChange> Changes)
{
    /// <summary>The numbers of this circulation, without support.</summary>
    /// <returns>The full set.</returns>
    public CirculationParameters Parameters() =>
        CirculationParameters.ForMass(MassKg).With(Changes.Select(static change => (change.Parameter, change.Value)));
}
