using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Calibration;

/// <summary>A reading beside what the fitted model gives for it.</summary>
/// <param name="Kind">The reading.</param>
/// <param name="Observed">As read.</param>
/// <param name="Fitted">By the fitted model.</param>
/// <param name="ResidualSd">Observed less fitted, in standard deviations of the reading.</param>
/// <param name="TakenDirectly">True where the reading was set as a parameter and not fitted.</param>
public sealed record FittedObservation(ObservationKind Kind, Estimate Observed, Estimate Fitted, double ResidualSd, bool TakenDirectly);
