using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Mean gas contents over a breath. A pool that was held as small swings with the breath; its true, large self stays near the mean. So the
/// mean is where the true pool starts.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
/// <param name="equations">Equations of the integrator, last evaluated at the end of the step.</param>
internal sealed class MeanContents<T>(CirculationEquations<T> equations) : IStepWitness<T>
    where T : unmanaged, ILane<T>
{
    private readonly T[] oxygen = new T[GasNode.Count];
    private readonly T[] carbonDioxide = new T[GasNode.Count];
    private T alveolarOxygen;
    private T alveolarCarbonDioxide;
    private T span;

    /// <inheritdoc/>
    public void Step(LaneIntegrator<T> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        T length = T.Load(to) - T.Load(from);
        span += length;
        ReadOnlySpan<T> o2 = equations.Gas.OxygenContent;
        ReadOnlySpan<T> co2 = equations.Gas.CarbonDioxideContent;
        for (int n = GasNode.PulmonaryVein; n < GasNode.Count; n++)
        {
            oxygen[n] += length * o2[n];
            carbonDioxide[n] += length * co2[n];
        }

        alveolarOxygen += length * integrator.State[StateIndex.AlveolarOxygen];
        alveolarCarbonDioxide += length * integrator.State[StateIndex.AlveolarCarbonDioxide];
    }

    /// <summary>Puts the mean contents into a state whose amounts were fitted to the true volumes.</summary>
    /// <param name="truth">Equations with true volumes.</param>
    /// <param name="lungs">True over quick volume of the gas in the lungs.</param>
    /// <param name="y">State.</param>
    public void Fill(CirculationEquations<T> truth, T lungs, T[] y)
    {
        for (int n = GasNode.PulmonaryVein; n < GasNode.Count; n++)
        {
            (T blood, T store) = truth.Gas.Holding(n, y);
            y[StateIndex.Oxygen + n] = oxygen[n] / span * blood;
            y[StateIndex.CarbonDioxide + n] = carbonDioxide[n] / span * (blood + store);
        }

        y[StateIndex.AlveolarOxygen] = alveolarOxygen / span * lungs;
        y[StateIndex.AlveolarCarbonDioxide] = alveolarCarbonDioxide / span * lungs;
    }
}
