using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Planning.Running;

/// <summary>One number of the model that a person asks to have changed.</summary>
/// <param name="Parameter">Which.</param>
/// <param name="From">Value before.</param>
/// <param name="To">Value after, inside the range of the model.</param>
/// <param name="IsRelative">True where it was asked for relative to the value before.</param>
public sealed record RequestedChange(CirculationParameter Parameter, double From, double To, bool IsRelative);
