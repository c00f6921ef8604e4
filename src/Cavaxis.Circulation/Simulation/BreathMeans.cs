using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Solver;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Means over a breath of the state and, forward and backward apart, of every flow that carries gas. A flow that goes to and fro mixes even
/// where its net is nothing, so its two directions are kept.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
/// <param name="equations">Equations of the integrator, last evaluated at the end of the step.</param>
internal sealed class BreathMeans<T>(CirculationEquations<T> equations) : IStepWitness<T>
    where T : unmanaged, ILane<T>
{
    private const int FirstFlow = S.VolumeCount;
    private const int StateFlows = S.SpeedRatio - FirstFlow;
    private const int SingleFlows = 20;
    private const int FlowCount = StateFlows + SingleFlows + (2 * AxisPorts.CellCount);

    private readonly T[] state = new T[S.OxygenFromLungs];
    private readonly T[] forward = new T[FlowCount];
    private readonly T[] backward = new T[FlowCount];
    private readonly T[] now = new T[FlowCount];
    private readonly T[] first = new T[FlowCount];
    private readonly T[] end = new T[FlowCount];
    private T span;
    private T lastLength;

    /// <summary>Length of what was seen, s.</summary>
    public T Span => span;

    /// <summary>Begins with the first moment of a breath.</summary>
    /// <param name="y">State there, where the equations were evaluated last.</param>
    public void Begin(ReadOnlySpan<T> y)
    {
        Array.Clear(state);
        Array.Clear(forward);
        Array.Clear(backward);
        (span, lastLength) = (T.Of(0), T.Of(0));
        Read(y, equations.Field, now);
        now.CopyTo(first, 0);
    }

    /// <inheritdoc/>
    public void Step(LaneIntegrator<T> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        // The state is that at the start of the step, the flows are those at its end: what belongs to the start was kept from the step before.
        T length = T.Load(to) - T.Load(from);
        ReadOnlySpan<T> y = integrator.State;
        T weight = T.IfPositive(length, T.Of(0.5) * (length + lastLength), T.Of(0));
        span += length;
        for (int i = 0; i < state.Length; i++)
        {
            state[i] += weight * y[i];
        }

        y.Slice(FirstFlow, StateFlows).CopyTo(now);
        Count(now, weight);
        Read(y, equations.Field, end);
        for (int i = StateFlows; i < FlowCount; i++)
        {
            now[i] = T.IfPositive(length, end[i], now[i]);
        }

        lastLength = T.IfPositive(length, length, lastLength);
    }

    /// <summary>Ends a breath; as it repeats itself, its last moment counts as its first.</summary>
    public void End() => Count(first, T.Of(0.5) * lastLength);

    /// <summary>Mean state with mean flows.</summary>
    /// <param name="direction">Above zero for the forward flows, below for the backward ones, zero for none.</param>
    /// <param name="y">State; running totals are left.</param>
    /// <param name="field">Flows; pressures are left, and volumes stand still as they do in the mean.</param>
    public void Fill(int direction, T[] y, FlowField<T> field)
    {
        T inverse = T.Of(1) / T.Max(span, T.Of(1e-9));
        for (int i = 0; i < state.Length; i++)
        {
            y[i] = state[i] * inverse;
        }

        for (int i = 0; i < FlowCount; i++)
        {
            now[i] = direction > 0 ? forward[i] * inverse : direction < 0 ? backward[i] * inverse : T.Of(0);
        }

        now.AsSpan(0, StateFlows).CopyTo(y.AsSpan(FirstFlow));
        Write(field);
    }

    private void Count(T[] flows, T weight)
    {
        T zero = T.Of(0);
        for (int i = 0; i < FlowCount; i++)
        {
            forward[i] += weight * T.Max(zero, flows[i]);
            backward[i] += weight * T.Min(zero, flows[i]);
        }
    }

    private static void Read(ReadOnlySpan<T> y, FlowField<T> f, T[] to)
    {
        y.Slice(FirstFlow, StateFlows).CopyTo(to);
        ReadOnlySpan<T> single =
        [
            f.CoronaryFlow, f.UpperFromAscending, f.UpperFromArch, f.SplanchnicFlow, f.LowerFlow, f.UpperVenousFlow, f.HepaticFlow, f.LowerVenousFlow,
            f.SuperiorCavaFlow, f.ThoracicCavaFlow, f.DiaphragmFlow, f.LungFlow, f.PulmonaryVenousFlow, f.AorticLeak, f.MitralLeak, f.SeptalFlow,
            f.VentFlow, f.TransvalvularFlow, f.ReturnToAscending, f.ReturnToDescending,
        ];
        single.CopyTo(to.AsSpan(StateFlows));
        f.Drained.CopyTo(to, StateFlows + SingleFlows);
        f.ReturnedTo.CopyTo(to, StateFlows + SingleFlows + AxisPorts.CellCount);
    }

    private void Write(FlowField<T> f)
    {
        ReadOnlySpan<T> v = now.AsSpan(StateFlows);
        (f.CoronaryFlow, f.UpperFromAscending, f.UpperFromArch, f.SplanchnicFlow, f.LowerFlow) = (v[0], v[1], v[2], v[3], v[4]);
        (f.UpperVenousFlow, f.HepaticFlow, f.LowerVenousFlow, f.SuperiorCavaFlow, f.ThoracicCavaFlow) = (v[5], v[6], v[7], v[8], v[9]);
        (f.DiaphragmFlow, f.LungFlow, f.PulmonaryVenousFlow, f.AorticLeak, f.MitralLeak) = (v[10], v[11], v[12], v[13], v[14]);
        (f.SeptalFlow, f.VentFlow, f.TransvalvularFlow, f.ReturnToAscending, f.ReturnToDescending) = (v[15], v[16], v[17], v[18], v[19]);
        v.Slice(SingleFlows, AxisPorts.CellCount).CopyTo(f.Drained);
        v.Slice(SingleFlows + AxisPorts.CellCount, AxisPorts.CellCount).CopyTo(f.ReturnedTo);
    }
}
