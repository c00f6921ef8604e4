using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Solver;

/// <summary>Counts the beats of each patient and begins the next beat and breath.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
/// <param name="equations">Equations with their clock.</param>
internal sealed class BeatKeeper<T>(CirculationEquations<T> equations)
    where T : unmanaged, ILane<T>
{
    private readonly int[] beats = new int[T.Count];
    private readonly double[] lastBreath = new double[T.Count];

    /// <summary>Length of the last whole breath of a patient, s; zero before the first.</summary>
    /// <param name="lane">Patient.</param>
    /// <returns>Length, s.</returns>
    public double LastBreath(int lane) => lastBreath[lane];

    /// <summary>Length of a beat that begins now.</summary>
    /// <param name="lane">Patient.</param>
    /// <param name="y">State.</param>
    /// <returns>Length, s.</returns>
    public double Period(int lane, T[] y) => 60
        / (equations.Constants[CirculationParameter.HeartRatePerMin][lane] * (1 + (ReflexGains.Rate * y[StateIndex.ReflexRate][lane])));

    /// <summary>Begins the next beat, and with it the next breath, of each patient whose beat is over.</summary>
    /// <param name="time">Time of each patient, s.</param>
    /// <param name="y">State.</param>
    /// <returns>True when any beat began.</returns>
    public bool Turn(double[] time, T[] y)
    {
        BeatClock<T> clock = equations.Clock;
        bool any = false;
        Span<double> start = stackalloc double[T.Count];
        Span<double> period = stackalloc double[T.Count];
        Span<double> breath = stackalloc double[T.Count];
        Span<double> begins = stackalloc double[T.Count];
        bool breathes = false;
        for (int lane = 0; lane < T.Count; lane++)
        {
            start[lane] = clock.BeatStart[lane];
            period[lane] = clock.BeatPeriod[lane];
            breath[lane] = clock.BreathStart[lane];
            begins[lane] = 0;
            if (time[lane] >= start[lane] + period[lane] - 1e-10)
            {
                any = true;
                start[lane] = time[lane];
                period[lane] = Period(lane, y);
                beats[lane]++;
                if (beats[lane] >= (int)clock.BeatsPerBreath[lane])
                {
                    beats[lane] = 0;
                    lastBreath[lane] = time[lane] - breath[lane];
                    breath[lane] = time[lane];
                    begins[lane] = 1;
                    breathes = true;
                }
            }
        }

        if (any)
        {
            clock.SetBeat(T.Load(start), T.Load(period));
            if (breathes)
            {
                clock.SetBreath(T.Load(breath), T.Load(begins));
            }
        }

        return any;
    }
}
