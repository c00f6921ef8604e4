using System.Collections.Immutable;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Sampling;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// All numbers of one curved anatomy: the dimensions of the axis and those of the lumen's own. The lumen's own are drawn apart from
/// those of the axis, by <see cref="Philox"/> with the same seed and sample and groups that the axis does not use.
/// </summary>
public sealed class LumenShape
{
    /// <summary>First group of four normals that the sampler of the axis leaves free.</summary>
    private const uint FirstGroup = 64;

    private const double UnitsPerWord = 1.0 / 4294967296.0;

    private readonly ImmutableArray<double> axis;
    private readonly ImmutableArray<double> own;

    private LumenShape(ImmutableArray<double> axis, ImmutableArray<double> own) => (this.axis, this.own) = (axis, own);

    /// <summary>A dimension of the axis.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>mm, degrees or 1.</returns>
    public double this[AxisDimension dimension] => axis[(int)dimension];

    /// <summary>One of the lumen's own dimensions.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>Degrees or 1.</returns>
    public double this[LumenDimension dimension] => own[(int)dimension];

    /// <summary>The anatomy at the middles of all beliefs.</summary>
    /// <param name="belief">The axis.</param>
    /// <returns>Its shape.</returns>
    public static LumenShape OfMedians(AxisDistribution belief)
    {
        ArgumentNullException.ThrowIfNull(belief);
        return new LumenShape([.. AxisDimensions.All.Select(belief.Median)], [.. LumenTable.Rows.Select(static row => row.Middle)]);
    }

    /// <summary>One sampled anatomy.</summary>
    /// <param name="samples">Sampled axes.</param>
    /// <param name="index">Which of them.</param>
    /// <param name="seed">Seed that they were drawn with.</param>
    /// <param name="first">Number of the first sample of the buffer in the long run.</param>
    /// <returns>Its shape; the same for the same sample and seed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such sample.</exception>
    public static LumenShape OfSample(AxisSamples samples, int index, ulong seed, uint first = 0)
    {
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, samples.Count);
        ulong sample = first + (ulong)index;
        return new LumenShape(
            [.. AxisDimensions.All.Select(dimension => samples[dimension][index])],
            [.. LumenTable.Rows.Select((row, i) => Value(row, Normal(sample, (uint)i, seed)))]);
    }

    /// <summary>The same shape with another value of one of the lumen's own dimensions.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <param name="value">Degrees or 1; within what the table draws.</param>
    /// <returns>Another shape.</returns>
    public LumenShape With(LumenDimension dimension, double value)
    {
        LumenParameter row = LumenTable.For(dimension);
        return new LumenShape(axis, own.SetItem((int)dimension, Math.Clamp(value, row.Low, row.High)));
    }

    /// <summary>The same shape with another value of a dimension of the axis, to ask what one of them does.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <param name="value">mm, degrees or 1.</param>
    /// <returns>Another shape.</returns>
    public LumenShape With(AxisDimension dimension, double value) => new(axis.SetItem((int)dimension, value), own);

    private static double Value(LumenParameter row, double z)
    {
        double drawn = row.Scale == LatentScale.Logarithmic ? row.Middle * Math.Exp(row.Spread * z) : row.Middle + (row.Spread * z);
        return Math.Clamp(drawn, row.Low, row.High);
    }

    private static double Normal(ulong sample, uint number, ulong seed)
    {
        (uint w0, uint w1, uint w2, uint w3) = Philox.Bits((uint)sample, (uint)(sample >> 32), FirstGroup + (number / 4), 0, seed);
        (uint a, uint b) = number % 4 < 2 ? (w0, w1) : (w2, w3);
        double radius = Math.Sqrt(-2 * Math.Log((a + 0.5) * UnitsPerWord));
        (double sin, double cos) = Math.SinCos(2 * Math.PI * UnitsPerWord * b);
        return radius * (number % 2 == 0 ? cos : sin);
    }
}
