using System.Globalization;

namespace Cavaxis.Records.Keeping;

/// <summary>Places in a store, both ends counted.</summary>
/// <param name="First">First place.</param>
/// <param name="Last">Last place.</param>
public sealed record PositionRange(long First, long Last)
{
    /// <summary>Number of places.</summary>
    public long Count => Last - First + 1;

    /// <inheritdoc/>
    public override string ToString() => First == Last ? First.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{First}-{Last}");

    /// <summary>The places from the first to the last that are not among those given.</summary>
    internal static IReadOnlyList<PositionRange> Missing(IEnumerable<long> ascending, long first, long last)
    {
        List<PositionRange> ranges = [];
        long next = first;
        foreach (long there in ascending)
        {
            if (there > next)
            {
                ranges.Add(new PositionRange(next, there - 1));
            }

            next = Math.Max(next, there + 1);
        }

        return next <= last ? [.. ranges, new PositionRange(next, last)] : ranges;
    }
}
