using System.Buffers;
using System.Numerics;
using System.Runtime.InteropServices;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;

namespace Cavaxis.Anatomy.Sampling;

/// <summary>
/// Draws anatomies from a belief: x = μ + L z with L the Cholesky factor and z standard normals by Box–Muller from
/// <see cref="Philox"/>. The counter is (sample, sample's high word, group of four normals, attempt) and the key is the seed, so
/// sample i depends on seed and i alone, not on how many are drawn or by how many threads. An impossible draw is drawn
/// again under the next attempt, at most <see cref="MostAttempts"/> times, and mended after that.
/// </summary>
public static class AxisSampler
{
    /// <summary>Attempts at one sample before it is mended.</summary>
    public const int MostAttempts = 32;

    private const int BlockLength = 128;
    private const int NormalsPerCall = 4;
    private const double UnitsPerWord = 1.0 / 4294967296.0;

    /// <summary>Draws anatomies into a new buffer.</summary>
    /// <param name="distribution">The belief.</param>
    /// <param name="count">Number of anatomies, at least 1.</param>
    /// <param name="seed">Seed; recorded with the result so that it can be drawn again.</param>
    /// <returns>The anatomies.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is not positive.</exception>
    public static AxisSamples Draw(AxisDistribution distribution, int count, ulong seed)
    {
        AxisSamples samples = new(count);
        Fill(distribution, samples, seed);
        return samples;
    }

    /// <summary>Draws anatomies into a buffer that is used again; nothing is allocated.</summary>
    /// <param name="distribution">The belief.</param>
    /// <param name="samples">Buffer to overwrite.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="first">Number of the first sample, so that parts of one long run can be drawn apart.</param>
    public static void Fill(AxisDistribution distribution, AxisSamples samples, ulong seed, uint first = 0)
    {
        ArgumentNullException.ThrowIfNull(distribution);
        ArgumentNullException.ThrowIfNull(samples);
        int n = AxisDimensions.Count;
        int calls = (n + NormalsPerCall - 1) / NormalsPerCall;
        double[] scratch = ArrayPool<double>.Shared.Rent(((calls * NormalsPerCall) + 1) * BlockLength);
        try
        {
            Span<double> normals = scratch.AsSpan(0, calls * NormalsPerCall * BlockLength);
            Span<double> row = scratch.AsSpan(normals.Length, BlockLength);
            int done = 0;
            while (done < samples.Count)
            {
                // Blocks start at multiples of their length in the long run: the vector functions may round a lane by its
                // neighbours, so a sample always has to have the same ones.
                int within = (int)((first + (ulong)done) % BlockLength);
                int length = Math.Min(BlockLength - within, samples.Count - done);
                FillNormals(normals, calls, first + (ulong)done - (ulong)within, seed, attempt: 0);
                for (int i = 0; i < n; i++)
                {
                    Transform(distribution, i, normals, row);
                    row.Slice(within, length).CopyTo(samples.Column(i)[done..]);
                }

                done += length;
            }

            (samples.Redrawn, samples.Mended) = (0, 0);
            for (int i = 0; i < samples.Count; i++)
            {
                if (!AxisPlausibility.IsPossible(samples, i))
                {
                    DrawAgain(distribution, samples, i, first + (ulong)i, seed, normals, row);
                }
            }
        }
        finally
        {
            ArrayPool<double>.Shared.Return(scratch);
        }
    }

    private static void DrawAgain(
        AxisDistribution distribution, AxisSamples samples, int i, ulong index, ulong seed, Span<double> normals,
        Span<double> row)
    {
        samples.Redrawn++;
        int calls = normals.Length / (NormalsPerCall * BlockLength);
        for (uint attempt = 1; attempt < MostAttempts; attempt++)
        {
            // The block starts at the sample itself: its neighbours are again always the same.
            FillNormals(normals, calls, index, seed, attempt);
            for (int d = 0; d < AxisDimensions.Count; d++)
            {
                Transform(distribution, d, normals, row);
                samples.Column(d)[i] = row[0];
            }

            if (AxisPlausibility.IsPossible(samples, i))
            {
                return;
            }
        }

        samples.Mended++;
        AxisPlausibility.Mend(samples, i);
    }

    // Row k of the block holds normal number k of its samples.
    private static void FillNormals(Span<double> normals, int calls, ulong index, ulong seed, uint attempt)
    {
        for (int call = 0; call < calls; call++)
        {
            Span<double> rows = normals.Slice(call * NormalsPerCall * BlockLength, NormalsPerCall * BlockLength);
            Span<double> radius1 = rows[..BlockLength];
            Span<double> angle1 = rows.Slice(BlockLength, BlockLength);
            Span<double> radius2 = rows.Slice(2 * BlockLength, BlockLength);
            Span<double> angle2 = rows.Slice(3 * BlockLength, BlockLength);
            for (int s = 0; s < BlockLength; s++)
            {
                ulong sample = index + (ulong)s;
                (uint w0, uint w1, uint w2, uint w3) = Philox.Bits(
                    (uint)sample, (uint)(sample >> 32), (uint)call, attempt, seed);
                // Half a unit is added so that the logarithm never sees zero; the largest normal is then 6.8.
                radius1[s] = (w0 + 0.5) * UnitsPerWord;
                angle1[s] = w1 * (2 * Math.PI * UnitsPerWord);
                radius2[s] = (w2 + 0.5) * UnitsPerWord;
                angle2[s] = w3 * (2 * Math.PI * UnitsPerWord);
            }

            BoxMuller(radius1, angle1);
            BoxMuller(radius2, angle2);
        }
    }

    private static void BoxMuller(Span<double> uniforms, Span<double> angles)
    {
        Span<Vector<double>> first = MemoryMarshal.Cast<double, Vector<double>>(uniforms);
        Span<Vector<double>> second = MemoryMarshal.Cast<double, Vector<double>>(angles);
        for (int v = 0; v < first.Length; v++)
        {
            Vector<double> radius = Vector.SquareRoot(Vector.Log(first[v]) * -2.0);
            (Vector<double> sin, Vector<double> cos) = Vector.SinCos(second[v]);
            first[v] = radius * cos;
            second[v] = radius * sin;
        }
    }

    private static void Transform(
        AxisDistribution distribution, int dimension, ReadOnlySpan<double> normals, Span<double> row)
    {
        ReadOnlySpan<double> factor = distribution.Factor.Slice(dimension * AxisDimensions.Count, dimension + 1);
        ReadOnlySpan<Vector<double>> source = MemoryMarshal.Cast<double, Vector<double>>(normals);
        Span<Vector<double>> target = MemoryMarshal.Cast<double, Vector<double>>(row);
        target.Fill(new Vector<double>(distribution.LatentMean((AxisDimension)dimension)));
        for (int k = 0; k < factor.Length; k++)
        {
            if (factor[k] == 0)
            {
                continue;
            }

            Vector<double> weight = new(factor[k]);
            ReadOnlySpan<Vector<double>> column = source.Slice(k * target.Length, target.Length);
            for (int v = 0; v < target.Length; v++)
            {
                target[v] += weight * column[v];
            }
        }

        if (AxisDimensions.ScaleOf((AxisDimension)dimension) == LatentScale.Logarithmic)
        {
            for (int v = 0; v < target.Length; v++)
            {
                target[v] = Vector.Exp(target[v]);
            }
        }
    }
}
