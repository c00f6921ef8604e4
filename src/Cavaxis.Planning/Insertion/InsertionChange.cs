using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>One thing done otherwise.</summary>
/// <param name="Words">What.</param>
/// <param name="Task">The insertion with it.</param>
internal sealed record InsertionChange(string Words, InsertionTask Task)
{
    private const double DeeperMm = 80;
    private const double NormalQuantile95 = 1.6448536269514722;

    /// <summary>How many things are tried.</summary>
    /// <param name="wire">Class of wire as planned.</param>
    public static int CountFor(WireClass wire) => Neighbours(wire).Count() + 2;

    /// <summary>Everything that is tried.</summary>
    /// <param name="task">The insertion as planned.</param>
    public static IEnumerable<InsertionChange> For(InsertionTask task)
    {
        foreach (WireClass wire in Neighbours(task.Wire))
        {
            yield return new($"{(wire > task.Wire ? "a stiffer" : "a softer")} wire ({JsonName.Of(wire.ToString())})", task with { Wire = wire });
        }

        yield return new(FormattableString.Invariant($"wire {DeeperMm / 10:F0} cm deeper"), task with { WireDeeperMm = DeeperMm });
        BodySide other = task.Side == BodySide.Right ? BodySide.Left : BodySide.Right;
        yield return new($"through the {(other == BodySide.Right ? "right" : "left")} side, same depth", task with { Side = other });
    }

    /// <summary>The next softer and the next stiffer class.</summary>
    private static IEnumerable<WireClass> Neighbours(WireClass wire) => Enum.GetValues<WireClass>().Where(w => Math.Abs((int)w - (int)wire) == 1);

    /// <summary>The comparison in the same anatomies.</summary>
    /// <param name="before">As planned.</param>
    /// <param name="after">With the change.</param>
    public InsertionAdvice Told(IReadOnlyList<AnatomyOutcome> before, IReadOnlyList<AnatomyOutcome> after)
    {
        double[] gains = [.. before.Zip(after, static (b, a) => (a.IsRight ? 1.0 : 0) - (b.IsRight ? 1.0 : 0))];
        double mean = gains.Average();
        double sd = Math.Sqrt(gains.Sum(g => (g - mean) * (g - mean)) / Math.Max(1, gains.Length - 1) / gains.Length);
        return new InsertionAdvice(
            Words,
            gains.Length,
            before.Count(static b => b.IsRight) / (double)gains.Length,
            after.Count(static a => a.IsRight) / (double)gains.Length,
            Estimate.WithInterval(mean, sd, mean - (NormalQuantile95 * sd), mean + (NormalQuantile95 * sd), Origin.Calculated));
    }
}
