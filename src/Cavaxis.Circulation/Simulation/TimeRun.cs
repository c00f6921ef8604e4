using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Solver;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using N = Cavaxis.Circulation.Equations.GasNode;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>Goes on from a settled state with other numbers, over time.</summary>
internal static class TimeRun
{
    /// <summary>Longest run, s: an hour.</summary>
    public const double LongestS = 3600;

    /// <summary>Most samples of a run.</summary>
    public const int MostSamples = 400_000;

    /// <summary>Runs.</summary>
    /// <param name="start">Where it starts.</param>
    /// <param name="changed">Numbers from time zero on.</param>
    /// <param name="seconds">Length.</param>
    /// <param name="spacingS">Time between samples.</param>
    /// <returns>Every signal over time.</returns>
    public static Trace Run(SettledState start, CirculationParameters changed, double seconds, double spacingS)
    {
        Require.InRange(seconds, spacingS, LongestS, "seconds", "Give a length of at most an hour and of at least one sample.");
        Require.InRange(spacingS, Math.Max(1e-4, seconds / MostSamples), 60, "sampleSpacingS", "Take fewer samples or a shorter run.");
        OneLane[] y = [.. start.State.ToArray().Select(static v => new OneLane(v))];
        CirculationEquations<OneLane> from = new(new ModelConstants<OneLane>([start.Parameters]));
        CirculationEquations<OneLane> to = new(new ModelConstants<OneLane>([changed]));
        from.Rates(new OneLane(0), new OneLane[ValveEvents<OneLane>.Elements], y, new OneLane[S.Count]);
        Infuse(start.Parameters, changed, y);
        InitialState.Refill(from, to, y);

        double mass = changed.MassKg / ParameterTable.ReferenceMassKg;
        LaneIntegrator<OneLane> integrator = new(to, [mass], Tolerance.Usual);
        integrator.SetState(y);
        double[] before = [.. y.Select(static v => v.Value)];
        int count = (int)Math.Floor((seconds / spacingS) + 1e-9) + 1;
        BreathSampler<OneLane> sampler = new(to, [0], [spacingS], [count]);

        // A sample at the very end must lie inside a step.
        integrator.Run([seconds + (1e-6 * spacingS)], sampler);
        return new Trace(sampler.Samples[0], spacingS, Budget(seconds, before, integrator.State));
    }

    /// <summary>Gives or takes the difference of blood volume in the veins, each by its compliance, with the gas contents that are there.</summary>
    private static void Infuse(CirculationParameters before, CirculationParameters after, OneLane[] y)
    {
        double given = after[BloodVolumeMl] - before[BloodVolumeMl];
        if (given == 0)
        {
            return;
        }

        (int Index, CirculationParameter Compliance)[] veins =
        [
            (S.UpperVein, UpperVenousComplianceMlPerMmHg), (S.SplanchnicVein, SplanchnicComplianceMlPerMmHg), (S.LowerVein, LowerVenousComplianceMlPerMmHg),
        ];
        double whole = veins.Sum(v => after[v.Compliance]);
        foreach ((int index, CirculationParameter compliance) in veins)
        {
            double volume = y[index].Value + (given * after[compliance] / whole);
            double held = y[index].Value;
            if (!(volume > 0.1 * held))
            {
                throw new InputFaultException(Require.OutOfRange(
                    after[BloodVolumeMl], before[BloodVolumeMl] - (0.9 * held * whole / after[compliance]), before[BloodVolumeMl] * 3, "bloodVolumeMl",
                    "So much cannot leave the veins at once; take less."));
            }

            y[index] = new OneLane(volume);
        }
    }

    private static OxygenBudget Budget(double seconds, double[] before, ReadOnlySpan<OneLane> after)
    {
        (double first, double last) = (before[S.AlveolarOxygen], after[S.AlveolarOxygen].Value);
        for (int n = 0; n < N.Count; n++)
        {
            first += before[S.Oxygen + n];
            last += after[S.Oxygen + n].Value;
        }

        double lungs = after[S.OxygenFromLungs].Value - before[S.OxygenFromLungs];
        double membrane = after[S.OxygenFromMembrane].Value - before[S.OxygenFromMembrane];
        double used = after[S.OxygenConsumed].Value - before[S.OxygenConsumed];
        return new OxygenBudget(seconds, lungs, membrane, used, last - first, first);
    }
}
