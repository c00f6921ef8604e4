using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Equations;

/// <summary>The whole set of equations: rates of change of the state at a time.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class CirculationEquations<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Prepares.</summary>
    /// <param name="constants">Parameters.</param>
    public CirculationEquations(ModelConstants<T> constants)
    {
        Constants = constants;
        Clock = new BeatClock<T>(constants);
        Blood = new BloodFlowEquations<T>(constants);
        Gas = new GasEquations<T>(constants);
    }

    /// <summary>Parameters.</summary>
    public ModelConstants<T> Constants { get; }

    /// <summary>Clock of beats and breaths.</summary>
    public BeatClock<T> Clock { get; }

    /// <summary>Motion of blood.</summary>
    public BloodFlowEquations<T> Blood { get; }

    /// <summary>Transport of gas.</summary>
    public GasEquations<T> Gas { get; }

    /// <summary>Pressures and flows of the last evaluation.</summary>
    public FlowField<T> Field { get; } = new();

    /// <summary>Rates of change.</summary>
    /// <param name="time">Time of each patient, s.</param>
    /// <param name="open">One for each open one-way element, zero for each closed one.</param>
    /// <param name="y">State.</param>
    /// <param name="dy">Where the rates go.</param>
    public void Rates(T time, ReadOnlySpan<T> open, ReadOnlySpan<T> y, Span<T> dy)
    {
        Clock.At(time);
        Blood.Rates(Clock, open, y, dy, Field);
        Gas.Rates(y, dy, Field);
    }
}
