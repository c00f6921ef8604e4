namespace Cavaxis.Devices.Cannulae;

/// <summary>
/// A bench curve fitted to ΔP = a Q + b Qⁿ-free form in reduced variables, so that it can be carried over to another
/// fluid by Reynolds similarity. See <c>docs/models/devices.md</c>.
/// </summary>
/// <param name="ReferenceDiameterMm">Diameter that made the variables dimensionless.</param>
/// <param name="EulerLogCoefficients">Coefficients, lowest order first, of ln Eu against ln Re.</param>
/// <param name="LowestReynolds">Lowest Reynolds number on the bench.</param>
/// <param name="HighestReynolds">Highest Reynolds number on the bench.</param>
/// <param name="RelativeSd">Relative scatter of the bench points about the fit.</param>
public sealed record WaterCurve(
    double ReferenceDiameterMm,
    IReadOnlyList<double> EulerLogCoefficients,
    double LowestReynolds,
    double HighestReynolds,
    double RelativeSd);
