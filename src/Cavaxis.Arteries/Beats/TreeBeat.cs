using System.Collections.Immutable;
using Cavaxis.Arteries.Scaling;

namespace Cavaxis.Arteries.Beats;

/// <summary>One settled beat of the tree at equal steps of time. The first index of each table is the moment, the second the place.</summary>
/// <param name="Tree">The tree that was run, with the arteries around a cannula as it stretches them.</param>
/// <param name="PeriodS">Length of the beat, s.</param>
/// <param name="PressurePa">Pressure in the middle of each segment, Pa.</param>
/// <param name="FlowM3PerS">Flow in the middle of each segment, m³/s.</param>
/// <param name="Share">Share of membrane blood in the middle of each segment.</param>
/// <param name="EndFlowM3PerS">Flow out of the end of each segment that has one, m³/s; zero for others.</param>
/// <param name="EndShare">Share of membrane blood at the end of each segment.</param>
/// <param name="AortaShare">Share of membrane blood along the aorta, at the places of <see cref="AortaPath"/>.</param>
/// <param name="RootPa">Pressure in the aortic root, Pa.</param>
/// <param name="StrokeMl">Volume ejected in the beat, mL.</param>
/// <param name="ValveOpenShare">Share of the beat with an open aortic valve.</param>
/// <param name="Beats">Beats until it repeated itself.</param>
/// <param name="FlowChange">Largest change of area or velocity against the beat before, over the largest of either.</param>
/// <param name="TransportBeats">Beats until the blood repeated itself.</param>
/// <param name="BloodSettled">True where the blood did.</param>
/// <param name="Imbalance">Membrane blood lost or made by the computation, over what the pump gave.</param>
/// <param name="VolumeImbalance">Blood lost or made by the computation, over what entered.</param>
/// <param name="Cells">Cells.</param>
/// <param name="StepsPerBeat">Steps in the beat.</param>
public sealed record TreeBeat(
    PatientTree Tree,
    double PeriodS,
    ImmutableArray<double[]> PressurePa,
    ImmutableArray<double[]> FlowM3PerS,
    ImmutableArray<double[]> Share,
    ImmutableArray<double[]> EndFlowM3PerS,
    ImmutableArray<double[]> EndShare,
    ImmutableArray<double[]> AortaShare,
    ImmutableArray<double> RootPa,
    double StrokeMl,
    double ValveOpenShare,
    int Beats,
    double FlowChange,
    int TransportBeats,
    bool BloodSettled,
    double Imbalance,
    double VolumeImbalance,
    int Cells,
    int StepsPerBeat)
{
    /// <summary>A place over the beat.</summary>
    /// <param name="table">One of the tables.</param>
    /// <param name="place">The second index.</param>
    /// <returns>Values.</returns>
    public static double[] At(ImmutableArray<double[]> table, int place) => [.. table.Select(moment => moment[place])];

    /// <summary>Flow through the aortic valve, L/min.</summary>
    public double NativeOutputLPerMin => StrokeMl / PeriodS * 0.06;
}
