using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>A reading beside what the fitted circulation gives for it.</summary>
/// <param name="Field">Field of the case file.</param>
/// <param name="Words">In plain words.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Observed">As read.</param>
/// <param name="Fitted">By the fitted circulation.</param>
/// <param name="ResidualSd">Observed less fitted, in standard deviations of the reading.</param>
/// <param name="TakenDirectly">True where the reading was set and not fitted.</param>
public sealed record CalibratedReading(
    string Field, string Words, string Unit, Estimate Observed, double Fitted, double ResidualSd, bool TakenDirectly);
