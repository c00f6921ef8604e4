using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Circulation.Calibration;

/// <summary>What the readings say of the patient's numbers, or the finding that no fit was found.</summary>
public sealed record CalibrationResult
{
    /// <summary>True where there is a fit; without one <see cref="Best"/> is null and the lists are empty.</summary>
    public bool Found => Best is not null;

    /// <summary>Why there is no fit; empty where there is one.</summary>
    public required string Reason { get; init; }

    /// <summary>Parameters of the best fit, null where there is none.</summary>
    public required CirculationParameters? Best { get; init; }

    /// <summary>The settled circulation of the best fit, null where there is none.</summary>
    public required SettledState? BestState { get; init; }

    /// <summary>The fitted parameters with their belief before and after.</summary>
    public required IReadOnlyList<FittedParameter> Parameters { get; init; }

    /// <summary>The readings beside the fitted values.</summary>
    public required IReadOnlyList<FittedObservation> Observations { get; init; }

    /// <summary>What the readings leave open, one sentence each.</summary>
    public required IReadOnlyList<string> NotDetermined { get; init; }

    /// <summary>Readings that contradict each other or that the model cannot reach, one sentence each.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>Sum of squared residuals of the fitted readings, in standard deviations of reading and model together.</summary>
    public required double ChiSquare { get; init; }

    /// <summary>Chance of a larger misfit, prior included, if model, prior and spreads were right.</summary>
    public required double MisfitProbability { get; init; }

    /// <summary>Draws from the belief after the readings, each a whole patient; the same seed gives the same draws.</summary>
    public required IReadOnlyList<CirculationParameters> Ensemble { get; init; }

    /// <summary>True where the search ended because nothing moved any more, not because its rounds were used up.</summary>
    public required bool Converged { get; init; }

    /// <summary>Rounds used.</summary>
    public required int Rounds { get; init; }
}
