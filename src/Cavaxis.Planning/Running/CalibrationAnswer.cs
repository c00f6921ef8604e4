namespace Cavaxis.Planning.Running;

/// <summary>Everything that <c>calibrate</c> says about a case.</summary>
/// <param name="CavaxisCalibration">Version of this format.</param>
/// <param name="Caution">The caution that stands on every result.</param>
/// <param name="CaseTitle">Title of the case.</param>
/// <param name="Invented">True when the case is invented.</param>
/// <param name="Found">True when there is a fit. When false there are no numbers.</param>
/// <param name="Reason">Why there is none; empty when there is.</param>
/// <param name="Patient">What was computed with.</param>
/// <param name="Readings">Readings beside the fitted values.</param>
/// <param name="Parameters">Fitted numbers before and after the readings.</param>
/// <param name="NotDetermined">What the readings leave open.</param>
/// <param name="Warnings">Readings that contradict each other or that the model cannot reach.</param>
/// <param name="ChiSquare">Sum of squared residuals, in standard deviations.</param>
/// <param name="MisfitProbability">Chance of a larger misfit if model and spreads were right.</param>
/// <param name="Converged">True where the search ended because nothing moved any more.</param>
/// <param name="Rounds">Rounds used.</param>
/// <param name="Members">Members of the ensemble.</param>
/// <param name="Seed">Key of the random numbers of the ensemble.</param>
/// <param name="Quantities">The best fit in numbers.</param>
public sealed record CalibrationAnswer(
    int CavaxisCalibration,
    string Caution,
    string CaseTitle,
    bool Invented,
    bool Found,
    string Reason,
    RunningPatient Patient,
    IReadOnlyList<CalibratedReading> Readings,
    IReadOnlyList<CalibratedParameter> Parameters,
    IReadOnlyList<string> NotDetermined,
    IReadOnlyList<string> Warnings,
    double ChiSquare,
    double MisfitProbability,
    bool Converged,
    int Rounds,
    int Members,
    ulong Seed,
    IReadOnlyList<QuantityValue> Quantities)
{
    /// <summary>Version of the output format.</summary>
    public const int CurrentVersion = 1;
}
