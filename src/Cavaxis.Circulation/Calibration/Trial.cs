using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Circulation.Calibration;

/// <summary>A point of the search whose circulation is to be settled.</summary>
/// <param name="place">Place in prior standard deviations.</param>
/// <param name="patient">The patient there.</param>
/// <param name="start">State to start from; null for a plausible one.</param>
internal sealed class Trial(double[] place, CirculationParameters patient, double[]? start)
{
    /// <summary>Place in prior standard deviations.</summary>
    public double[] Place { get; } = place;

    /// <summary>The patient there.</summary>
    public CirculationParameters Patient { get; } = patient;

    /// <summary>State to start from; null for a plausible one.</summary>
    public double[]? Start { get; } = start;

    /// <summary>The settled circulation; null until it is computed.</summary>
    public SettledState? State { get; private set; }

    /// <summary>True when it has settled.</summary>
    public bool Settled => State is { Settled: true };

    /// <summary>Takes the result.</summary>
    /// <param name="state">The settled circulation, or the finding that there is none.</param>
    public void Take(SettledState state) => State = state;
}
