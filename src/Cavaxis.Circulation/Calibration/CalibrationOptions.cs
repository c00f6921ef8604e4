using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Calibration;

/// <summary>How a calibration is done.</summary>
public sealed record CalibrationOptions
{
    /// <summary>The usual way.</summary>
    public static CalibrationOptions Usual { get; } = new();

    /// <summary>Parameters to fit, out of <see cref="PriorTable.All"/>; null for all that matter in the given configuration.</summary>
    public IReadOnlyList<CirculationParameter>? Fitted { get; init; }

    /// <summary>True where haemoglobin has not been measured and is to be fitted too.</summary>
    public bool HaemoglobinUnknown { get; init; }

    /// <summary>Most rounds of the search.</summary>
    public int MostRounds { get; init; } = 8;

    /// <summary>Members of the ensemble; zero for none.</summary>
    public int EnsembleSize { get; init; } = 40;

    /// <summary>Key of the random numbers of the ensemble.</summary>
    public ulong Seed { get; init; } = 1;
}
