using System.Runtime.CompilerServices;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Equations;

/// <summary>
/// Where each patient stands in beat and breath. A beat begins with the atrial contraction; its time marks shrink with the square
/// root of its length, and further where they would not fit. A breath is a whole number of beats, so that a settled state
/// repeats itself exactly.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class BeatClock<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Share of a beat that all time marks together may fill.</summary>
    public const double MostOfBeat = 0.92;

    private readonly ModelConstants<T> constants;
    private T atrialEnd;
    private T ventricularStart;
    private T endSystole;
    private T relaxed;
    private T inspirationEnd;
    private T expirationEnd;

    /// <summary>A clock at time zero.</summary>
    /// <param name="constants">Parameters.</param>
    public BeatClock(ModelConstants<T> constants)
    {
        this.constants = constants;
        T sixty = T.Of(60);
        Span<double> beats = stackalloc double[T.Count];
        T ratio = constants[HeartRatePerMin] / constants[BreathsPerMin];
        for (int i = 0; i < T.Count; i++)
        {
            beats[i] = Math.Max(1, Math.Round(ratio[i]));
        }

        BeatsPerBreath = T.Load(beats);
        SetBeat(T.Of(0), sixty / constants[HeartRatePerMin]);
        SetBreath(T.Of(0), T.Of(1));
    }

    /// <summary>Beats in a breath.</summary>
    public T BeatsPerBreath { get; }

    /// <summary>Start of the beat, s.</summary>
    public T BeatStart { get; private set; }

    /// <summary>Length of the beat, s.</summary>
    public T BeatPeriod { get; private set; }

    /// <summary>Start of the breath, s.</summary>
    public T BreathStart { get; private set; }

    /// <summary>Length of the breath, s.</summary>
    public T BreathPeriod { get; private set; }

    /// <summary>Activation of the ventricles, 0 to 1.</summary>
    public T Ventricular { get; private set; }

    /// <summary>Activation of the atria, 0 to 1.</summary>
    public T Atrial { get; private set; }

    /// <summary>Expansion of the chest, 0 to 1.</summary>
    public T Breath { get; private set; }

    /// <summary>Filling of a balloon pump, 0 to 1.</summary>
    public T Balloon { get; private set; }

    /// <summary>Factor on the time marks of a beat of one second.</summary>
    /// <param name="patient">Parameters.</param>
    /// <param name="periodS">Length of the beat, s.</param>
    /// <returns>Factor.</returns>
    public static double Scale(CirculationParameters patient, double periodS) => Math.Min(
        Math.Sqrt(periodS),
        periodS * MostOfBeat / (patient[AtrioventricularDelayS] + patient[VentricularRiseS] + patient[VentricularFallS]));

    /// <summary>Begins beats.</summary>
    /// <param name="start">Start, s.</param>
    /// <param name="period">Length, s.</param>
    public void SetBeat(T start, T period)
    {
        BeatStart = start;
        BeatPeriod = period;
        T whole = constants[AtrioventricularDelayS] + constants[VentricularRiseS] + constants[VentricularFallS];
        T scale = T.Min(T.Sqrt(period), period * T.Of(MostOfBeat) / whole);
        atrialEnd = constants[AtrialContractionS] * scale;
        ventricularStart = constants[AtrioventricularDelayS] * scale;
        endSystole = ventricularStart + (constants[VentricularRiseS] * scale);
        relaxed = endSystole + (constants[VentricularFallS] * scale);
    }

    /// <summary>Begins breaths, with the length of the present beats.</summary>
    /// <param name="start">Start, s.</param>
    /// <param name="begins">One for each patient whose breath begins; the breath of the others keeps its length.</param>
    public void SetBreath(T start, T begins)
    {
        BreathStart = T.IfPositive(begins, start, BreathStart);
        BreathPeriod = T.IfPositive(begins, BeatsPerBreath * BeatPeriod, BreathPeriod);
        inspirationEnd = constants[InspirationShare] * BreathPeriod;
        expirationEnd = T.Min(BreathPeriod, inspirationEnd * T.Of(2.2));
    }

    /// <summary>Sets the activations for a time in each patient's own beat.</summary>
    /// <param name="time">Time, s.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void At(T time)
    {
        T zero = T.Of(0);
        T one = T.Of(1);
        T half = T.Of(0.5);
        T pi = T.Of(Math.PI);
        T beat = time - BeatStart;
        T rise = T.Max(zero, T.Min(one, (beat - ventricularStart) / (endSystole - ventricularStart)));
        T fall = T.Max(zero, T.Min(one, (beat - endSystole) / (relaxed - endSystole)));
        Ventricular = half * (one - Cosine.Of(pi * (rise + fall)));
        Atrial = half * (one - Cosine.Of(T.Of(2 * Math.PI) * T.Max(zero, T.Min(one, beat / atrialEnd))));
        T breath = time - BreathStart;
        T inward = T.Max(zero, T.Min(one, breath / inspirationEnd));
        T outward = T.Max(zero, T.Min(one, (breath - inspirationEnd) / (expirationEnd - inspirationEnd)));
        Breath = half * (one - Cosine.Of(pi * (inward + outward)));
        T deflate = one - Smooth(T.Max(zero, T.Min(one, beat / ventricularStart)));
        T inflate = Smooth(T.Max(zero, T.Min(one, (beat - endSystole) / (relaxed - endSystole))));
        Balloon = deflate + inflate;
    }

    /// <summary>The next moment after a time at which an activation has a kink.</summary>
    /// <param name="lane">Which patient.</param>
    /// <param name="time">Time, s.</param>
    /// <returns>The moment, s; at the latest the end of the beat.</returns>
    public double NextBreak(int lane, double time)
    {
        double beat = time - BeatStart[lane];
        double breath = time - BreathStart[lane];
        double next = BeatPeriod[lane];
        const double guard = 1e-9;
        next = beat < atrialEnd[lane] - guard ? Math.Min(next, atrialEnd[lane]) : next;
        next = beat < ventricularStart[lane] - guard ? Math.Min(next, ventricularStart[lane]) : next;
        next = beat < endSystole[lane] - guard ? Math.Min(next, endSystole[lane]) : next;
        next = beat < relaxed[lane] - guard ? Math.Min(next, relaxed[lane]) : next;
        double end = BeatStart[lane] + next;
        end = breath < inspirationEnd[lane] - guard ? Math.Min(end, BreathStart[lane] + inspirationEnd[lane]) : end;
        return breath < expirationEnd[lane] - guard ? Math.Min(end, BreathStart[lane] + expirationEnd[lane]) : end;
    }

    private static T Smooth(T x) => x * x * (T.Of(3) - (T.Of(2) * x));
}
