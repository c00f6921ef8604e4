using System.Runtime.InteropServices;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Waveforms as they go to the browser: what to draw, and all samples in one row of bytes.</summary>
/// <param name="Strips">Name, unit and scale of each strip.</param>
/// <param name="Segments">Pieces of time, played one after the other.</param>
/// <param name="Samples">32-bit numbers: segment by segment, strip by strip, then volume and pressure of the left ventricle.</param>
public sealed record WavePacket(IReadOnlyList<WaveScale> Strips, IReadOnlyList<WaveSegment> Segments, byte[] Samples)
{
    /// <summary>A settled circulation that repeats its breath.</summary>
    /// <param name="state">The circulation.</param>
    /// <param name="strips">What to draw.</param>
    internal static WavePacket Of(SettledState state, IReadOnlyList<WaveStrip> strips) => Of([Breath(state, strips, string.Empty)], strips);

    /// <summary>The way from before to after: one breath before, the seconds after the changes, then the breath of the new rest.</summary>
    /// <param name="before">Before.</param>
    /// <param name="transition">After the changes.</param>
    /// <param name="after">At rest again.</param>
    /// <param name="strips">What to draw.</param>
    internal static WavePacket Of(SettledState before, Trace transition, SettledState after, IReadOnlyList<WaveStrip> strips)
    {
        Piece change = new(
            new WaveSegment(transition.SpacingS, transition.Count - 1, false, "change"),
            [.. strips.Select(s => s.Values(after.Parameters, transition[s.Signal][..^1]))],
            transition[Signal.LeftVentricularVolume][..^1].ToArray(),
            transition[Signal.LeftVentricularPressure][..^1].ToArray());
        Piece first = Breath(before, strips, string.Empty);
        return Of([first with { Segment = first.Segment with { Repeats = false } }, change, Breath(after, strips, "new rest")], strips);
    }

    private static Piece Breath(SettledState state, IReadOnlyList<WaveStrip> strips, string mark)
    {
        BreathRecord breath = state.RequireBreath();
        return new Piece(
            new WaveSegment(breath.PeriodS / breath.Count, breath.Count, true, mark),
            [.. strips.Select(s => s.Values(state.Parameters, breath[s.Signal]))],
            breath[Signal.LeftVentricularVolume].ToArray(),
            breath[Signal.LeftVentricularPressure].ToArray());
    }

    private static WavePacket Of(IReadOnlyList<Piece> pieces, IReadOnlyList<WaveStrip> strips)
    {
        List<float> samples = [];
        foreach (double[] values in pieces.SelectMany(static p => (double[][])[.. p.Values, p.Volume, p.Pressure]))
        {
            samples.AddRange(values.Select(static v => (float)v));
        }

        WaveScale[] scales = [.. strips.Select((s, i) => WaveScale.Of(s.Words, s.Unit, pieces.Min(p => p.Values[i].Min()), pieces.Max(p => p.Values[i].Max())))];
        return new WavePacket(scales, [.. pieces.Select(static p => p.Segment)], MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(samples)).ToArray());
    }

    private sealed record Piece(WaveSegment Segment, double[][] Values, double[] Volume, double[] Pressure);
}
