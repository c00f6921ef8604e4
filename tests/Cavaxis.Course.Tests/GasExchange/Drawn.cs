using Cavaxis.Quantities;

namespace Cavaxis.Course.Tests.GasExchange;

/// <summary>Normal numbers with a fixed seed, for repeats of a measurement.</summary>
internal sealed class Drawn(int seed)
{
    private readonly Random random = new(seed);

    public double Normal(double mean, double sd) =>
        mean + (sd * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));

    public Estimate Read(double truth, double sd) => Estimate.Normal(Normal(truth, sd), sd, Origin.Measured);

    /// <summary>Three standard errors of a share of 0.9 among so many repeats.</summary>
    public static double Slack(int repeats) => 3 * Math.Sqrt(0.9 * 0.1 / repeats);
}
