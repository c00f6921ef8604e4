using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>A number of the model before and after the readings.</summary>
/// <param name="Name">Name, as <c>--change</c> takes it.</param>
/// <param name="Meaning">In plain words.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Before">Belief before the readings.</param>
/// <param name="After">Belief after them.</param>
/// <param name="Determined">Share of the variance that the readings take away.</param>
/// <param name="IsDetermined">True where that is at least half.</param>
public sealed record CalibratedParameter(
    string Name, string Meaning, string Unit, Estimate Before, Estimate After, double Determined, bool IsDetermined);
