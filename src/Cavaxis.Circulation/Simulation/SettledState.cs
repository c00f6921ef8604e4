using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;

namespace Cavaxis.Circulation.Simulation;

/// <summary>A circulation that repeats itself breath by breath, or the finding that it does not.</summary>
public sealed class SettledState
{
    private readonly double[]? state;

    internal SettledState(
        CirculationParameters parameters, BreathRecord? breath, CirculationSummary? summary, double[]? state, string reason, double simulatedS)
    {
        Parameters = parameters;
        Breath = breath;
        Summary = summary;
        this.state = state;
        Reason = reason;
        SimulatedS = simulatedS;
    }

    /// <summary>The numbers it was computed with.</summary>
    public CirculationParameters Parameters { get; }

    /// <summary>True when the circulation has settled.</summary>
    public bool Settled => Breath is not null;

    /// <summary>One settled breath; null when it has not settled, so that no number can be taken from it.</summary>
    public BreathRecord? Breath { get; }

    /// <summary>The numbers of that breath; null when it has not settled.</summary>
    public CirculationSummary? Summary { get; }

    /// <summary>Why it has not settled; empty when it has.</summary>
    public string Reason { get; }

    /// <summary>What still moves, in words within a sentence, where it has not settled; empty when it has.</summary>
    public string Moving { get; internal init; } = string.Empty;

    /// <summary>Simulated time spent to settle, s.</summary>
    public double SimulatedS { get; }

    /// <summary>State at the start of the breath, for going on from there.</summary>
    /// <exception cref="NotSettledException">It has not settled.</exception>
    internal ReadOnlySpan<double> State => state ?? throw new NotSettledException(Reason);

    /// <summary>The breath, or an exception that says why there is none.</summary>
    /// <returns>One settled breath.</returns>
    /// <exception cref="NotSettledException">It has not settled.</exception>
    public BreathRecord RequireBreath() => Breath ?? throw new NotSettledException(Reason);

    /// <summary>The summary, or an exception that says why there is none.</summary>
    /// <returns>The numbers.</returns>
    /// <exception cref="NotSettledException">It has not settled.</exception>
    public CirculationSummary RequireSummary() => Summary ?? throw new NotSettledException(Reason);
}
