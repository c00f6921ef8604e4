using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Solver;

/// <summary>A flow brought to its periodic state.</summary>
/// <param name="Beats">Beats taken.</param>
/// <param name="Change">
/// Change over the last beat: that of area in any cell relative to the largest area, or that of velocity relative to the largest velocity, whichever is more, at four moments
/// of the beat.
/// </param>
/// <param name="IsPeriodic">True where the change fell to the tolerance.</param>
public sealed record PeriodicFlow(int Beats, double Change, bool IsPeriodic)
{
    private const int Moments = 4;

    /// <summary>Runs a simulation beat by beat until a beat repeats the one before.</summary>
    /// <param name="simulation">The simulation; it is left at the start of a beat.</param>
    /// <param name="period">Length of a beat, s.</param>
    /// <param name="tolerance">Change that counts as none, such as 1e-4.</param>
    /// <param name="mostBeats">Beats at most.</param>
    /// <returns>How it went.</returns>
    /// <exception cref="InputFaultException">A period or tolerance outside its range.</exception>
    public static PeriodicFlow Settle(ArterialSimulation simulation, double period, double tolerance, int mostBeats)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        Require.InRange(period, 0.05, 100, "period (s)", "Length of a beat.");
        Require.InRange(tolerance, 1e-14, 1, "tolerance (1)", "1e-4 is fine.");
        double[][] before = [.. Enumerable.Range(0, 2 * Moments).Select(_ => new double[simulation.Grid.Length])];
        double change = double.PositiveInfinity;
        for (int beat = 1; beat <= mostBeats; beat++)
        {
            change = 0;
            for (int m = 0; m < Moments; m++)
            {
                simulation.Advance(period / Moments);
                change = Math.Max(change, Compare(simulation, simulation.State.Area, before[2 * m]));
                change = Math.Max(change, Compare(simulation, simulation.State.Velocity, before[(2 * m) + 1]));
            }

            if (beat > 1 && change <= tolerance)
            {
                return new PeriodicFlow(beat, change, true);
            }
        }

        return new PeriodicFlow(mostBeats, change, false);
    }

    private static double Compare(ArterialSimulation simulation, double[] now, double[] before)
    {
        double change = 0, most = 0;
        foreach (int cell in simulation.Grid.Cells())
        {
            most = Math.Max(most, Math.Abs(now[cell]));
            change = Math.Max(change, Math.Abs(now[cell] - before[cell]));
        }

        now.CopyTo(before, 0);
        return most > 0 ? change / most : 0;
    }
}
