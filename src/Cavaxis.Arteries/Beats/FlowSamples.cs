using System.Collections.Immutable;

namespace Cavaxis.Arteries.Beats;

/// <summary>Pressures and flows of one beat at equal steps of time.</summary>
/// <param name="PressurePa">Pressure in the middle of each segment, Pa.</param>
/// <param name="FlowM3PerS">Flow in the middle of each segment, m³/s.</param>
/// <param name="EndFlowM3PerS">Flow out of the ends, m³/s; zero where a segment divides.</param>
/// <param name="RootPa">Pressure in the aortic root, Pa.</param>
/// <param name="StrokeMl">Volume ejected, mL.</param>
/// <param name="ValveOpenShare">Share of the beat with an open aortic valve.</param>
/// <param name="Steps">Steps of the solver.</param>
internal sealed record FlowSamples(
    ImmutableArray<double[]> PressurePa,
    ImmutableArray<double[]> FlowM3PerS,
    ImmutableArray<double[]> EndFlowM3PerS,
    ImmutableArray<double> RootPa,
    double StrokeMl,
    double ValveOpenShare,
    int Steps);
