using System.Collections.Concurrent;

namespace Cavaxis.Planning.Fit;

/// <summary>
/// Rows of one number for each anatomy, handed out and taken back. A plan fills some hundred of them, each too large for
/// the young generation of the heap.
/// </summary>
/// <param name="length">Number of anatomies.</param>
internal sealed class AnatomyRows(int length)
{
    private readonly ConcurrentBag<double[]> free = [];

    /// <summary>A row with any content.</summary>
    /// <returns>The row.</returns>
    public double[] Rent() => free.TryTake(out double[]? row) ? row : GC.AllocateUninitializedArray<double>(length);

    /// <summary>Takes a row back; the caller no longer uses it.</summary>
    /// <param name="row">A row of this object.</param>
    public void Return(double[] row) => free.Add(row);
}
