using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Anatomy.Sampling;

/// <summary>
/// Sampled anatomies, one array per dimension, so that a loop over anatomies reads each dimension in one run of memory.
/// Sample i of every array belongs to the same anatomy. The buffer may be filled again.
/// </summary>
public sealed class AxisSamples
{
    private readonly double[][] columns;

    /// <summary>An empty buffer.</summary>
    /// <param name="count">Number of anatomies, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is not positive.</exception>
    public AxisSamples(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        Count = count;
        columns = new double[AxisDimensions.Count][];
        for (int i = 0; i < columns.Length; i++)
        {
            columns[i] = new double[count];
        }
    }

    /// <summary>Number of anatomies.</summary>
    public int Count { get; }

    /// <summary>How many anatomies had to be drawn again because the first draw was impossible.</summary>
    public int Redrawn { get; internal set; }

    /// <summary>How many anatomies stayed impossible and were mended (see <see cref="AxisSampler"/>).</summary>
    public int Mended { get; internal set; }

    /// <summary>All values of one dimension, in mm, degrees or 1.</summary>
    /// <param name="dimension">The dimension.</param>
    /// <returns>One value per anatomy.</returns>
    public ReadOnlySpan<double> this[AxisDimension dimension] => columns[(int)dimension];

    internal Span<double> Column(AxisDimension dimension) => columns[(int)dimension];

    internal Span<double> Column(int dimension) => columns[dimension];
}
