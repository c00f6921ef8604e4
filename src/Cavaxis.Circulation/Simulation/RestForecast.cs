using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Tells from the breaths so far where each patient of a row will come to rest, for its next breath to start there: volumes by
/// <see cref="BloodExtrapolation"/>, contents of gas by <see cref="GasBalance{T}"/>. A patient's forecast does not depend on its neighbours.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class RestForecast<T>
    where T : unmanaged, ILane<T>
{
    // The mean flows are learnt anew until volumes change by less than this in a breath.
    private const double SteadyVolumes = 2e-4;

    // A content may not be taken further than by this factor at once.
    private const double MostFactor = 3;

    // A breath that changes gas this many times more than the one before shows a balance that does not hold: less of the way is taken then.
    private const double MostGrowth = 2;
    private const double LessTrust = 0.25;
    private const double MoreTrust = 1.3;

    private readonly GasBalance<T> balance;
    private readonly BloodExtrapolation[] blood;
    private readonly bool[] learns = new bool[T.Count];
    private readonly double[] volumeChange = new double[T.Count];
    private readonly double[] gasChange = new double[T.Count];
    private readonly double[] trust = new double[T.Count];
    private readonly double[] first = new double[S.Count];
    private readonly double[] last = new double[S.Count];
    private readonly double[] holding = new double[S.Count];
    private readonly double[] left = new double[S.Count];

    /// <summary>Prepares.</summary>
    /// <param name="constants">Parameters.</param>
    /// <param name="massRatio">Body mass of each patient over that of the adult.</param>
    public RestForecast(ModelConstants<T> constants, ReadOnlySpan<double> massRatio)
    {
        balance = new GasBalance<T>(constants);
        blood = new BloodExtrapolation[T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            blood[lane] = new BloodExtrapolation(massRatio[lane]);
        }
    }

    /// <summary>True while the mean flows of the next breath are wanted.</summary>
    public bool Learns => learns.Contains(true);

    /// <summary>Begins again with another integrator; what was learnt is kept until there is something newer.</summary>
    public void Begin()
    {
        Array.Fill(learns, true);
        Array.Fill(volumeChange, double.PositiveInfinity);
        Array.Fill(gasChange, double.PositiveInfinity);
        Array.Fill(trust, 1);
    }

    /// <summary>Takes note of a breath.</summary>
    /// <param name="lane">Patient.</param>
    /// <param name="rests">True for a patient that is done.</param>
    /// <param name="volumes">Largest change of a volume in the breath, in usual sizes.</param>
    /// <param name="gas">Largest change of an amount of gas.</param>
    public void Note(int lane, bool rests, double volumes, double gas)
    {
        learns[lane] = !rests && volumeChange[lane] >= SteadyVolumes;
        trust[lane] = gas > MostGrowth * gasChange[lane] ? trust[lane] * LessTrust : Math.Min(1, trust[lane] * MoreTrust);
        (volumeChange[lane], gasChange[lane]) = (volumes, gas);
    }

    /// <summary>Moves the patients to where the next breath is to start.</summary>
    /// <param name="before">State at the start of the breath.</param>
    /// <param name="next">State at its end; moved in place.</param>
    /// <param name="means">Means of the breath; looked at where they are wanted.</param>
    /// <param name="rests">True for each patient that stays where it is.</param>
    /// <param name="error">Error of a breath, in usual sizes.</param>
    public void Apply(T[] before, T[] next, BreathMeans<T> means, ReadOnlySpan<bool> rests, double error)
    {
        if (Learns)
        {
            means.End();
            balance.Learn(means, learns, volumeChange);
        }

        for (int lane = 0; lane < T.Count; lane++)
        {
            if (!rests[lane])
            {
                Move(before, next, lane, error);
            }
        }
    }

    private static void Put(T[] row, int index, int lane, double value)
    {
        Span<double> numbers = stackalloc double[T.Count];
        for (int other = 0; other < T.Count; other++)
        {
            numbers[other] = row[index][other];
        }

        numbers[lane] = value;
        row[index] = T.Load(numbers);
    }

    private void Move(T[] before, T[] next, int lane, double error)
    {
        for (int i = 0; i < S.Count; i++)
        {
            (first[i], last[i]) = (before[i][lane], next[i][lane]);
        }

        balance.Ahead(lane, before, next, left);
        balance.Hold(next, lane, holding);
        for (int i = S.Oxygen; i < S.OxygenFromLungs; i++)
        {
            last[i] = Content(i, last[i] / holding[i], trust[lane] * left[i]);
        }

        blood[lane].Apply(first, last, error);
        for (int i = 0; i < S.Oxygen; i++)
        {
            Put(next, i, lane, last[i]);
        }

        // The contents are put into the volumes that the next breath starts with.
        balance.Hold(next, lane, holding);
        for (int i = S.Oxygen; i < S.OxygenFromLungs; i++)
        {
            Put(next, i, lane, last[i] * holding[i]);
        }
    }

    private static double Content(int index, double content, double change)
    {
        bool share = index is >= S.Returned and < S.AlveolarOxygen;
        double most = Math.Max(0, content);
        return share ? Math.Clamp(content + change, 0, 1) : Math.Clamp(content + change, most / MostFactor, most * MostFactor);
    }
}
