using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Presets;

/// <summary>One number of a preset that differs from the resting adult scaled by mass.</summary>
/// <param name="Parameter">Which.</param>
/// <param name="Value">Its value, in the unit of the parameter table.</param>
/// <param name="Source">Why it has this value.</param>
public sealed record PresetChange(CirculationParameter Parameter, double Value, Source Source);
