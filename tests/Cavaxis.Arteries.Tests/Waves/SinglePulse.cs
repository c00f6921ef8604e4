using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Tests.Waves;

/// <summary>Case 1 of the benchmark set of 2015: a pulse runs down 10 m of vessel. Numbers and exact checks: mechanics-and-arteries.md a.2.</summary>
internal static class SinglePulse
{
    public const double WaveSpeed = 6.1721;
    public const double HighestPressure = 20.63;

    public static ArterialSimulation Simulation(double viscosity, double cellLength, double profile = 9) => new(new ArterialSetup(
        new([new("tube", "in", "out", 10, 0.01, 0.01, 0.0015, 0.0015, 400e3, 0)], new BloodFluid(1050, viscosity, profile)),
        [new("in", new FlowInlet(static t => 1e-6 * Math.Exp(-1e4 * (t - 0.05) * (t - 0.05)))), new("out", new NonReflectingEnd(0))],
        0)
    { CellLength = cellLength });

    /// <summary>Time and height of the highest pressure at a place, the time between two readings by a parabola.</summary>
    public static (double Time, double Pressure) Highest(ArterialSimulation simulation, double place, double from, double to)
    {
        const double Step = 0.0005;
        simulation.Advance(from - simulation.Time);
        ArterialProbe probe = simulation.Locate(new("tube", place));
        List<double> read = [];
        while (simulation.Time < to)
        {
            read.Add(simulation.Pressure(probe));
            simulation.Advance(Step);
        }

        int top = read.IndexOf(read.Max());
        double left = read[top - 1], middle = read[top], right = read[top + 1];
        double shift = 0.5 * (left - right) / (left - (2 * middle) + right);
        return (from + (Step * (top + shift)), middle - (0.25 * (left - right) * shift));
    }
}
