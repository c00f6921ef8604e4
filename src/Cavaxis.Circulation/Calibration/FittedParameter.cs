using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Calibration;

/// <summary>What is believed of a parameter before and after the readings.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Prior">Belief before.</param>
/// <param name="Posterior">Belief after; the value is the best fit.</param>
/// <param name="Determined">1 − posterior variance/prior variance on the working scale: 0 nothing learnt, 1 known.</param>
/// <param name="IsDetermined">True where the readings take away more than half of the prior variance.</param>
public sealed record FittedParameter(
    CirculationParameter Parameter, Estimate Prior, Estimate Posterior, double Determined, bool IsDetermined);
