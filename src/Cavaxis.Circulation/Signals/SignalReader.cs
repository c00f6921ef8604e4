using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using N = Cavaxis.Circulation.Equations.GasNode;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Signals;

/// <summary>Reads every signal of a moment from the state, after the equations were evaluated there.</summary>
internal static class SignalReader
{
    /// <summary>Number of signals.</summary>
    public static readonly int Count = Enum.GetValues<Signal>().Length;

    /// <summary>Reads.</summary>
    /// <typeparam name="T">One patient or a row of them.</typeparam>
    /// <param name="equations">Evaluated at this moment.</param>
    /// <param name="open">Which one-way elements are open.</param>
    /// <param name="y">State.</param>
    /// <param name="values">One value for each signal, in their order.</param>
    public static void Read<T>(CirculationEquations<T> equations, ReadOnlySpan<T> open, ReadOnlySpan<T> y, Span<T> values)
        where T : unmanaged, ILane<T>
    {
        FlowField<T> f = equations.Field;
        GasEquations<T> gas = equations.Gas;
        ModelConstants<T> k = equations.Constants;
        ReadOnlySpan<T> o2 = gas.OxygenContent;
        ReadOnlySpan<T> co2 = gas.CarbonDioxideContent;
        T[] p = f.Pressure;
        T flow = T.Of(0.06);
        T perDl = T.Of(100);
        T recirculated = T.Of(0);
        for (int c = 0; c < AxisPorts.CellCount; c++)
        {
            recirculated += f.Drained[c] * gas.ReturnedShare[c];
        }

        T native = (f.UpperVenousFlow * o2[N.UpperVein]) + (f.HepaticFlow * o2[N.SplanchnicVein])
            + (f.LowerVenousFlow * o2[N.LowerVein]) + (f.CoronaryFlow * o2[N.Coronary]);
        T nativeFlow = f.UpperVenousFlow + f.HepaticFlow + f.LowerVenousFlow + f.CoronaryFlow;
        T delivered = ((f.UpperFromAscending + f.CoronaryFlow) * o2[N.Ascending]) + (f.UpperFromArch * o2[N.Arch])
            + ((f.SplanchnicFlow + f.LowerFlow) * o2[N.Descending]);
        T systemic = f.UpperFromAscending + f.CoronaryFlow + f.UpperFromArch + f.SplanchnicFlow + f.LowerFlow;
        T tension = T.Of(GasExchange<T>.MmHgPerStandardShare) / k[CirculationParameter.LungGasVolumeMl];
        ReadOnlySpan<T> all =
        [
            p[S.RightAtrium], p[S.RightVentricle], p[S.PulmonaryArtery], p[S.PulmonaryVein], p[S.LeftAtrium], p[S.LeftVentricle],
            p[S.Ascending], p[S.Arch], p[S.Descending], p[S.SuperiorCava], p[S.AbdominalCava], f.Pleural, f.Abdominal,
            f.InletPressure, f.OutletPressure, y[S.LeftVentricle], y[S.RightVentricle], y[S.RightAtrium],
            y[S.SuperiorCava] / k[CirculationParameter.SuperiorCavaZeroVolumeMl],
            y[S.AbdominalCava] / k[CirculationParameter.AbdominalCavaZeroVolumeMl], f.Openness,
            flow * (y[S.AorticValveFlow] - f.AorticLeak), flow * y[S.PulmonaryValveFlow], flow * (y[S.MitralFlow] - f.MitralLeak),
            flow * y[S.TricuspidFlow], flow * f.LungFlow, flow * f.SuperiorCavaFlow, flow * f.ThoracicCavaFlow,
            flow * y[S.DescendingFlow], flow * y[S.ArchFlow], flow * y[S.CircuitFlow], flow * systemic, y[S.SpeedRatio], open[3],
            recirculated / T.Max(f.DrainageFlow, T.Of(1e-6)), flow * recirculated,
            perDl * o2[N.PulmonaryArtery], perDl * native / nativeFlow, perDl * o2[N.Ascending], perDl * o2[N.Arch], perDl * o2[N.Descending],
            perDl * o2[N.DrainageLine], perDl * o2[N.ReturnLine], perDl * o2[N.PulmonaryVein], perDl * co2[N.Ascending],
            perDl * co2[N.PulmonaryArtery], perDl * co2[N.ReturnLine], y[S.AlveolarOxygen] * tension, y[S.AlveolarCarbonDioxide] * tension,
            T.Of(60) * delivered,
        ];
        all.CopyTo(values);
    }
}
