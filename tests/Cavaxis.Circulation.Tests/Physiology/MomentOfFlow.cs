using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>The blood flow equations at one moment of a state that a test chooses.</summary>
internal sealed class MomentOfFlow
{
    private readonly BloodFlowEquations<OneLane> equations;
    private readonly BeatClock<OneLane> clock;
    private readonly OneLane[] rates = new OneLane[S.Count];

    public MomentOfFlow(CirculationParameters parameters)
    {
        Parameters = parameters;
        ModelConstants<OneLane> constants = new([parameters]);
        equations = new BloodFlowEquations<OneLane>(constants);
        clock = new BeatClock<OneLane>(constants);
        State = [.. InitialState.Of(parameters).Select(static v => new OneLane(v))];
    }

    public CirculationParameters Parameters { get; }

    public OneLane[] State { get; }

    public FlowField<OneLane> Field { get; } = new();

    public double Pressure(int index) => Field.Pressure[index].Value;

    public void Set(int index, double value) => State[index] = new OneLane(value);

    public double[] Rates(double timeS, bool valvesOpen)
    {
        clock.At(new OneLane(timeS));
        OneLane[] open = [.. Enumerable.Range(0, 5).Select(i => new OneLane(valvesOpen && i < 4 ? 1 : 0))];
        equations.Rates(clock, open, State, rates, Field);
        return [.. rates.Select(static r => r.Value)];
    }
}
