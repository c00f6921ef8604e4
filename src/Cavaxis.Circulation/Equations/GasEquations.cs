using System.Runtime.CompilerServices;
using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Lanes;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using N = Cavaxis.Circulation.Equations.GasNode;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Equations;

/// <summary>
/// Oxygen and carbon dioxide carried as conserved amounts through every volume (docs/models/circulation.md, sections 6 and 7), and the
/// mark of returned blood in the axis, from which recirculation follows.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class GasEquations<T>
    where T : unmanaged, ILane<T>
{
    private static readonly int[] VolumeOfNode =
    [
        S.SuperiorCava, S.SuperiorCava, S.RightAtrium, S.RightAtrium, S.RightAtrium, S.RightAtrium,
        S.ThoracicCava, S.AbdominalCava, S.AbdominalCava, S.AbdominalCava,
        S.RightVentricle, S.PulmonaryArtery, S.PulmonaryVein, S.LeftAtrium, S.LeftVentricle, S.Ascending, S.Arch, S.Descending,
        S.UpperVein, S.SplanchnicVein, S.LowerVein,
    ];

    /// <summary>Blood of the heart muscle as a share of blood volume.</summary>
    private const double CoronaryVolumeShare = 0.008;

    private readonly ModelConstants<T> k;
    private readonly GasExchange<T> gas;
    private readonly AxisTransport<T> axis;
    private readonly T[] oxygen = new T[N.Count];
    private readonly T[] carbonDioxide = new T[N.Count];
    private readonly T[] returned = new T[AxisPorts.CellCount];
    private readonly T[] part = new T[N.Coronary];
    private readonly T[] fixedInverse = new T[N.Count - N.Coronary];
    private readonly T[] fixedStoreInverse = new T[N.Count - N.Coronary];
    private readonly T[] store;

    /// <summary>Prepares.</summary>
    /// <param name="constants">Parameters.</param>
    public GasEquations(ModelConstants<T> constants)
    {
        k = constants;
        gas = new GasExchange<T>(constants);
        axis = new AxisTransport<T>(constants);
        T tissue = k[TissueCarbonDioxideMl];
        T rest = T.Of(1) - k[HeartOxygenShare] - k[UpperOxygenShare] - k[SplanchnicOxygenShare];
        store = [tissue * k[HeartOxygenShare], tissue * k[UpperOxygenShare], tissue * k[SplanchnicOxygenShare], tissue * rest];
        Array.Fill(part, T.Of(1));
        for (int c = 0; c < AxisPorts.CellCount; c++)
        {
            part[c] = T.Of(AxisTransport<T>.VolumeShare[c]);
        }

        for (int n = N.Coronary; n < N.Count; n++)
        {
            (T blood, T stored) = Holding(n, []);
            fixedInverse[n - N.Coronary] = T.Of(1) / blood;
            fixedStoreInverse[n - N.Coronary] = T.Of(1) / (blood + stored);
        }
    }

    /// <summary>Exchange in lungs and membrane.</summary>
    public GasExchange<T> Exchange => gas;

    /// <summary>Concentrations of the moment of the last evaluation, by node.</summary>
    public ReadOnlySpan<T> OxygenContent => oxygen;

    /// <summary>Concentrations of the moment of the last evaluation, by node.</summary>
    public ReadOnlySpan<T> CarbonDioxideContent => carbonDioxide;

    /// <summary>Share of returned blood in each part of the axis at the last evaluation.</summary>
    public ReadOnlySpan<T> ReturnedShare => returned;

    /// <summary>Volume that holds the gas of a node: blood, and for carbon dioxide the tissue's store.</summary>
    /// <param name="node">The node.</param>
    /// <param name="y">State.</param>
    /// <returns>Blood and, beside it, store; mL.</returns>
    public (T Blood, T Store) Holding(int node, ReadOnlySpan<T> y)
    {
        T blood = node switch
        {
            N.Coronary => T.Of(CoronaryVolumeShare) * k[BloodVolumeMl],
            N.DrainageLine => k[DrainageLineMl],
            N.MembraneLung => k[MembraneLungMl],
            N.ReturnLine => k[ReturnLineMl],
            < AxisPorts.CellCount => T.Of(AxisTransport<T>.VolumeShare[node]) * y[VolumeOfNode[node]],
            _ => y[VolumeOfNode[node]],
        };
        T stored = node switch
        {
            N.Coronary => store[0],
            N.UpperVein => store[1],
            N.SplanchnicVein => store[2],
            N.LowerVein => store[3],
            _ => T.Of(0),
        };
        return (blood, stored);
    }

    /// <summary>Rates of change of the gas part of the state.</summary>
    /// <param name="y">State.</param>
    /// <param name="dy">Rates; those of the volumes are already there.</param>
    /// <param name="f">Blood flow of the moment.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Rates(ReadOnlySpan<T> y, Span<T> dy, FlowField<T> f)
    {
        Concentrations(y);
        axis.SetFlows(f, y[S.TricuspidFlow]);
        Carry(y, f, oxygen, dy.Slice(S.Oxygen, N.Count));
        Carry(y, f, carbonDioxide, dy.Slice(S.CarbonDioxide, N.Count));
        T zero = T.Of(0);
        axis.Rates(f, returned, zero, zero, zero, zero, zero, T.Of(1), dy.Slice(S.Returned, AxisPorts.CellCount));
        dy[S.Returned + (int)AxisCell.Vestibule] -= AxisTransport<T>.Upwind(y[S.TricuspidFlow], returned[(int)AxisCell.Vestibule], zero);
        Lungs(y, dy, f);
        Tissues(dy);
        Membrane(y, dy);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Concentrations(ReadOnlySpan<T> y)
    {
        T one = T.Of(1);
        T least = T.Of(1e-3);
        for (int n = 0; n < N.Coronary; n++)
        {
            T inverse = one / T.Max(part[n] * y[VolumeOfNode[n]], least);
            oxygen[n] = y[S.Oxygen + n] * inverse;
            carbonDioxide[n] = y[S.CarbonDioxide + n] * inverse;
            if (n < AxisPorts.CellCount)
            {
                returned[n] = y[S.Returned + n] * inverse;
            }
        }

        for (int n = N.Coronary; n < N.Count; n++)
        {
            oxygen[n] = y[S.Oxygen + n] * fixedInverse[n - N.Coronary];
            carbonDioxide[n] = y[S.CarbonDioxide + n] * fixedStoreInverse[n - N.Coronary];
        }

        for (int n = N.UpperVein; n <= N.LowerVein; n++)
        {
            carbonDioxide[n] = y[S.CarbonDioxide + n] / (T.Max(y[VolumeOfNode[n]], least) + store[n - N.UpperVein + 1]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Carry(ReadOnlySpan<T> y, FlowField<T> f, ReadOnlySpan<T> c, Span<T> rates)
    {
        T inLine = c[N.DrainageLine];
        T circuit = y[S.CircuitFlow];
        axis.Rates(
            f, c, c[N.UpperVein], c[N.SplanchnicVein], c[N.LowerVein], c[N.Coronary], c[N.LeftAtrium], c[N.ReturnLine], rates);
        (T upper, T hepatic, T lower) = axis.VenousInflow(f, c, c[N.UpperVein], c[N.SplanchnicVein], c[N.LowerVein]);
        T drained = f.VentFlow * c[N.LeftVentricle];
        for (int i = 0; i < AxisPorts.CellCount; i++)
        {
            drained += f.Drained[i] * c[i];
        }

        T tricuspid = y[S.TricuspidFlow] * c[(int)AxisCell.Vestibule];
        T pulmonary = y[S.PulmonaryValveFlow] * c[N.RightVentricle];
        T lung = f.LungFlow * c[N.PulmonaryArtery];
        T toAtrium = AxisTransport<T>.Upwind(f.PulmonaryVenousFlow, c[N.PulmonaryVein], c[N.LeftAtrium]);
        T mitral = (y[S.MitralFlow] * c[N.LeftAtrium]) - (f.MitralLeak * c[N.LeftVentricle]);
        T aortic = ((y[S.AorticValveFlow] + f.TransvalvularFlow) * c[N.LeftVentricle]) - (f.AorticLeak * c[N.Ascending]);
        T septal = AxisTransport<T>.Upwind(f.SeptalFlow, c[N.LeftAtrium], c[(int)AxisCell.MiddleAtrium]);
        T arch = AxisTransport<T>.Upwind(y[S.ArchFlow], c[N.Ascending], c[N.Arch]);
        T descending = AxisTransport<T>.Upwind(y[S.DescendingFlow], c[N.Arch], c[N.Descending]);
        T right = f.UpperFromAscending * c[N.Ascending];
        T left = f.UpperFromArch * c[N.Arch];
        T coronary = f.CoronaryFlow * c[N.Ascending];
        T splanchnic = f.SplanchnicFlow * c[N.Descending];
        T legs = f.LowerFlow * c[N.Descending];
        rates[(int)AxisCell.Vestibule] -= tricuspid;
        rates[N.RightVentricle] = tricuspid - pulmonary;
        rates[N.PulmonaryArtery] = pulmonary - lung;
        rates[N.PulmonaryVein] = lung - toAtrium;
        rates[N.LeftAtrium] = toAtrium - mitral - septal;
        rates[N.LeftVentricle] = mitral - aortic - (f.VentFlow * c[N.LeftVentricle]);
        rates[N.Ascending] = aortic - arch - right - coronary + (f.ReturnToAscending * c[N.ReturnLine]);
        rates[N.Arch] = arch - descending - left;
        rates[N.Descending] = descending - splanchnic - legs + (f.ReturnToDescending * c[N.ReturnLine]);
        rates[N.UpperVein] = right + left - upper;
        rates[N.SplanchnicVein] = splanchnic - hepatic;
        rates[N.LowerVein] = legs - lower;
        rates[N.Coronary] = coronary - AxisTransport<T>.Upwind(f.CoronaryFlow, c[N.Coronary], c[(int)AxisCell.LowerAtrium]);
        rates[N.DrainageLine] = drained - (circuit * inLine);
        rates[N.MembraneLung] = circuit * (inLine - c[N.MembraneLung]);
        rates[N.ReturnLine] = circuit * (c[N.MembraneLung] - c[N.ReturnLine]);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Lungs(ReadOnlySpan<T> y, Span<T> dy, FlowField<T> f)
    {
        T tension = T.Of(GasExchange<T>.MmHgPerStandardShare) / k[LungGasVolumeMl];
        T alveolarOxygen = y[S.AlveolarOxygen] * tension;
        T alveolarCarbonDioxide = y[S.AlveolarCarbonDioxide] * tension;
        T ventilation = k[AlveolarVentilationLPerMin] * T.Of(1000.0 / 60 / GasExchange<T>.MmHgPerStandardShare);
        T exposed = f.LungFlow * (T.Of(1) - k[ShuntFraction]);
        T full = gas.OxygenContentAt(alveolarOxygen);
        T uptake = exposed * (full - oxygen[N.PulmonaryArtery]);
        T output = exposed * (carbonDioxide[N.PulmonaryArtery] - gas.CarbonDioxideContentAt(alveolarCarbonDioxide, full));
        T inspired = T.Of(GasExchange<T>.DryPressureMmHg) * k[InspiredOxygenFraction];
        T breathedIn = ventilation * (inspired - alveolarOxygen);
        T breathedOut = ventilation * alveolarCarbonDioxide;
        dy[S.Oxygen + N.PulmonaryVein] += uptake;
        dy[S.CarbonDioxide + N.PulmonaryVein] -= output;
        dy[S.AlveolarOxygen] = breathedIn - uptake;
        dy[S.AlveolarCarbonDioxide] = output - breathedOut;
        dy[S.OxygenFromLungs] = breathedIn;
        dy[S.CarbonDioxideByLungs] = breathedOut;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Tissues(Span<T> dy)
    {
        T sixty = T.Of(60);
        T need = k[OxygenConsumptionMlPerMin] / sixty;
        T make = k[CarbonDioxideProductionMlPerMin] / sixty;
        T rest = T.Of(1) - k[HeartOxygenShare] - k[UpperOxygenShare] - k[SplanchnicOxygenShare];
        T used = Tissue(dy, N.Coronary, k[HeartOxygenShare], need, make) + Tissue(dy, N.UpperVein, k[UpperOxygenShare], need, make)
            + Tissue(dy, N.SplanchnicVein, k[SplanchnicOxygenShare], need, make) + Tissue(dy, N.LowerVein, rest, need, make);
        dy[S.OxygenConsumed] = used;
        dy[S.CarbonDioxideProduced] = make;
    }

    private T Tissue(Span<T> dy, int node, T share, T need, T make)
    {
        T square = oxygen[node] * oxygen[node];
        T used = need * share * square / (square + (k[CriticalOxygenMlPerMl] * k[CriticalOxygenMlPerMl]));
        dy[S.Oxygen + node] -= used;
        dy[S.CarbonDioxide + node] += make * share;
        return used;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Membrane(ReadOnlySpan<T> y, Span<T> dy)
    {
        T flow = T.Max(T.Of(0), y[S.CircuitFlow]);
        T inlet = oxygen[N.DrainageLine];
        T given = flow * (gas.MembraneOxygen(inlet, flow) - inlet);
        T taken = k[CircuitOn] * gas.MembraneCarbonDioxide(carbonDioxide[N.DrainageLine], inlet, flow) * flow / (flow + T.Of(0.5));
        dy[S.Oxygen + N.MembraneLung] += given;
        dy[S.CarbonDioxide + N.MembraneLung] -= taken;
        dy[S.OxygenFromMembrane] = given;
        dy[S.CarbonDioxideByMembrane] = taken;
    }
}
