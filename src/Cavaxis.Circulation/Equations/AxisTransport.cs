using System.Runtime.CompilerServices;
using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Lanes;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Equations;

/// <summary>
/// Transport along the cavo-atrial axis (docs/models/circulation.md, section 6): flows between its ten parts follow from continuity,
/// upstream concentration is carried, eddies and the return jet exchange blood between neighbours.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class AxisTransport<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Share of its vessel's volume that each part of the axis holds.</summary>
    public static readonly double[] VolumeShare = [0.5, 0.5, 0.25, 0.35, 0.2, 0.2, 1, 0.35, 0.35, 0.3];

    // Neighbours: caudal or lateral partner of each joint, in the order of the flows below.
    private static readonly (int From, int To)[] Joints = [(0, 1), (1, 2), (2, 3), (3, 4), (5, 3), (6, 5), (7, 6), (8, 7), (9, 8)];

    private readonly ModelConstants<T> k;
    private readonly T[] flow = new T[9];
    private readonly T[] exchange = new T[9];
    private T high;
    private T low;
    private T renal;
    private T iliac;

    /// <summary>Prepares.</summary>
    /// <param name="constants">Parameters.</param>
    public AxisTransport(ModelConstants<T> constants) => k = constants;

    /// <summary>Flows between the parts, positive towards the tricuspid valve, from the blood flow of the moment.</summary>
    /// <param name="f">Blood flow.</param>
    /// <param name="tricuspid">Flow through the tricuspid valve.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void SetFlows(FlowField<T> f, T tricuspid)
    {
        T[] d = f.Drained;
        T[] r = f.ReturnedTo;
        low = f.UpperVenousFlow * k[AzygosShare];
        high = f.UpperVenousFlow - low;
        renal = f.LowerVenousFlow * k[RenalShareOfLower];
        iliac = f.LowerVenousFlow - renal;
        flow[0] = high + r[0] - d[0] - (T.Of(VolumeShare[0]) * f.SuperiorCavaChange);
        flow[1] = f.SuperiorCavaFlow;
        flow[2] = f.SuperiorCavaFlow + r[2] - d[2] - (T.Of(VolumeShare[2]) * f.AtriumChange);
        flow[3] = tricuspid + d[4] - r[4] + (T.Of(VolumeShare[4]) * f.AtriumChange);
        flow[4] = f.ThoracicCavaFlow + f.CoronaryFlow + r[5] - d[5] - (T.Of(VolumeShare[5]) * f.AtriumChange);
        flow[5] = f.ThoracicCavaFlow;
        flow[6] = f.DiaphragmFlow;
        flow[8] = iliac + r[9] - d[9] - (T.Of(VolumeShare[9]) * f.AbdominalCavaChange);
        flow[7] = flow[8] + renal + r[8] - d[8] - (T.Of(VolumeShare[8]) * f.AbdominalCavaChange);
        T caval = k[CavalMixingMlPerS];
        T atrial = k[AtrialMixingMlPerS];
        exchange[0] = exchange[6] = exchange[7] = exchange[8] = caval;
        exchange[1] = exchange[5] = caval + (T.Of(0.25) * atrial);
        exchange[2] = exchange[3] = exchange[4] = atrial;

        // A jet stirs where it comes to rest: entrainment is in proportion to its own flow, and blood that it draws in must flow back.
        T stirring = k[JetMixing];
        for (int j = 0; j < Joints.Length; j++)
        {
            (int from, int to) = Joints[j];
            exchange[j] += stirring * T.Max(T.Of(0), r[from] + r[to]);
        }
    }

    /// <summary>Rates of the amounts carried in the ten parts, without what leaves through the tricuspid valve.</summary>
    /// <param name="f">Blood flow.</param>
    /// <param name="c">Concentration in the ten parts.</param>
    /// <param name="upper">Concentration of the upper venous blood.</param>
    /// <param name="hepatic">Concentration of the hepatic venous blood.</param>
    /// <param name="lower">Concentration of renal and iliac blood.</param>
    /// <param name="coronary">Concentration of coronary sinus blood.</param>
    /// <param name="leftAtrium">Concentration of blood that crosses an atrial opening.</param>
    /// <param name="returned">Concentration of returned blood.</param>
    /// <param name="rates">Where the rates of the ten amounts go.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Rates(
        FlowField<T> f, ReadOnlySpan<T> c, T upper, T hepatic, T lower, T coronary, T leftAtrium, T returned, Span<T> rates)
    {
        for (int i = 0; i < AxisPorts.CellCount; i++)
        {
            rates[i] = (f.ReturnedTo[i] * returned) - (f.Drained[i] * c[i]);
        }

        for (int j = 0; j < Joints.Length; j++)
        {
            (int from, int to) = Joints[j];
            T moved = Upwind(flow[j], c[from], c[to]) + (exchange[j] * (c[from] - c[to]));
            rates[from] -= moved;
            rates[to] += moved;
        }

        rates[0] += Upwind(high, upper, c[0]);
        rates[1] += Upwind(low, upper, c[1]);
        rates[3] += Upwind(f.SeptalFlow, leftAtrium, c[3]);
        rates[5] += Upwind(f.CoronaryFlow, coronary, c[5]);
        rates[7] += Upwind(f.HepaticFlow, hepatic, c[7]);
        rates[8] += Upwind(renal, lower, c[8]);
        rates[9] += Upwind(iliac, lower, c[9]);
    }

    /// <summary>What leaves the upper, hepatic and lower veins towards the axis, with regard to reversal.</summary>
    /// <param name="f">Blood flow.</param>
    /// <param name="c">Concentration in the ten parts.</param>
    /// <param name="upper">Concentration of the upper venous blood.</param>
    /// <param name="hepatic">Concentration of the hepatic venous blood.</param>
    /// <param name="lower">Concentration of renal and iliac blood.</param>
    /// <returns>Amounts per second out of the upper, splanchnic and lower veins.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public (T Upper, T Hepatic, T Lower) VenousInflow(FlowField<T> f, ReadOnlySpan<T> c, T upper, T hepatic, T lower) => (
        Upwind(high, upper, c[0]) + Upwind(low, upper, c[1]),
        Upwind(f.HepaticFlow, hepatic, c[7]),
        Upwind(renal, lower, c[8]) + Upwind(iliac, lower, c[9]));

    /// <summary>Amount per second that a flow carries from the side it comes from.</summary>
    /// <param name="flow">Flow from the first to the second.</param>
    /// <param name="from">Concentration of the first.</param>
    /// <param name="to">Concentration of the second.</param>
    /// <returns>Amount per second.</returns>
    public static T Upwind(T flow, T from, T to) => (T.Max(flow, T.Of(0)) * from) + (T.Min(flow, T.Of(0)) * to);
}
