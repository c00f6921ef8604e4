namespace Cavaxis.Planning.Running;

/// <summary>The carbon dioxide curve of the circulation, content = a P^b (1 + h (1 − S)) in mL/mL and mmHg, fitted to this patient's blood.</summary>
/// <param name="Scale">a.</param>
/// <param name="Exponent">b.</param>
/// <param name="Haldane">h.</param>
/// <param name="BaseExcessMmolPerL">Base excess that was held, mmol/L.</param>
/// <param name="LargestErrorMlPerDl">Largest difference from the fitted contents, mL/dL.</param>
/// <param name="LowestPco2MmHg">Lowest tension of the fit.</param>
/// <param name="HighestPco2MmHg">Highest tension of the fit.</param>
public sealed record CarbonDioxideFit(
    double Scale, double Exponent, double Haldane, double BaseExcessMmolPerL, double LargestErrorMlPerDl, double LowestPco2MmHg, double HighestPco2MmHg);
