using Cavaxis.Circulation.Parameters;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Cavaxis.Circulation.Calibration;

/// <summary>
/// Search for the most probable place (Gauss-Newton on residuals and prior together). It asks for circulations in lists, so that many can be settled
/// side by side, and goes on when they are there. Between full sets of slopes it learns from its own steps (Broyden's update).
/// </summary>
internal sealed class CalibrationSearch
{
    private const double FirstStride = 0.4;
    private const double BeliefStride = 0.3;
    private const double LeastStride = 0.05;
    private const double LongestStep = 2;

    // Over shorter ways the error of settling would be taken for a slope.
    private const double LeastLearnt = 0.2;

    // Gain of the objective, in squared standard deviations, below which a step is not worth taking.
    private const double SmallGain = 0.2;

    // Slopes count as those of the best place while it has moved by less than this, in standard deviations of the belief.
    private const double NearEnough = 0.5;

    // Slopes are computed anew after so many steps, or when a step gains less than this share of what they promise.
    private const int MostLearnt = 2;
    private const double FairShare = 0.4;

    // Marquardt's damping of the steps that are tried side by side, and of those tried when none of them gains.
    private static readonly double[] Dampings = [0, 0.5, 4];
    private static readonly double[] StrongDampings = [20, 100];

    private readonly SearchSpace space;
    private readonly ReadingSet readings;
    private readonly CalibrationOptions options;
    private readonly StateForecast forecast = new();
    private Trial centre;
    private double[] residuals = [];
    private Matrix<double> slopes;
    private double[] differentiatedAt = [];
    private bool exact;
    private bool stuck;
    private int learnt;
    private double expected;

    /// <summary>Prepares.</summary>
    /// <param name="space">What is searched.</param>
    /// <param name="readings">What it must come near to.</param>
    /// <param name="options">How long.</param>
    public CalibrationSearch(SearchSpace space, ReadingSet readings, CalibrationOptions options)
    {
        this.space = space;
        this.readings = readings;
        this.options = options;
        double[] middle = new double[space.Count];
        centre = new Trial(middle, space.At(middle), null);
        slopes = new DenseMatrix(Math.Max(1, readings.Fitted.Count), space.Count);
    }

    /// <summary>The best place so far, settled.</summary>
    public Trial Best => centre;

    /// <summary>Belief after the readings; null until the search has ended, or where there is no fit.</summary>
    public LaplaceBelief? Belief { get; private set; }

    /// <summary>Residuals at the best place.</summary>
    public IReadOnlyList<double> Residuals => residuals;

    /// <summary>Directions along which no neighbour settled.</summary>
    public SortedSet<int> Blind { get; } = [];

    /// <summary>Why there is no fit; empty where there is one.</summary>
    public string Reason { get; private set; } = string.Empty;

    /// <summary>True where nothing moved any more.</summary>
    public bool Converged { get; private set; }

    /// <summary>Rounds used.</summary>
    public int Rounds { get; private set; }

    /// <summary>Runs; each list yielded must be settled before the next is asked for.</summary>
    /// <returns>Lists of trials.</returns>
    public IEnumerable<IReadOnlyList<Trial>> Run()
    {
        yield return [centre];
        if (!centre.Settled)
        {
            Reason = "The patient before the readings does not settle: " + centre.State?.Reason;
            yield break;
        }

        residuals = readings.Residuals(centre.State!.RequireSummary());
        foreach (IReadOnlyList<Trial> asked in Differentiate())
        {
            yield return asked;
        }

        while (true)
        {
            double gain = Step(0).Gain;
            bool last = gain < SmallGain || Rounds >= options.MostRounds;
            if (last && exact)
            {
                Converged = gain < SmallGain;
                break;
            }

            if (last || stuck)
            {
                foreach (IReadOnlyList<Trial> asked in Differentiate())
                {
                    yield return asked;
                }

                continue;
            }

            Rounds++;
            expected = gain;
            Trial[] trials = [.. Dampings.Select(Ahead)];
            yield return trials;
            if (!Accept(trials) && exact)
            {
                Trial[] shorter = [.. StrongDampings.Select(Ahead)];
                yield return shorter;
                if (!Accept(shorter))
                {
                    // Not even the shortest step gains: the bottom is reached, as far as it can be told.
                    Converged = true;
                    break;
                }
            }
        }

        BeliefSides sides = new(space, readings, centre, residuals, slopes);
        Trial[] beside = sides.Trials(forecast);
        yield return beside;
        Belief = sides.Belief(beside);
    }

    private static double Objective(double[] place, double[] misfit) => place.Sum(static x => x * x) + misfit.Sum(static x => x * x);

    /// <summary>Step with damping, and the gain of the objective that the slopes promise for it.</summary>
    private (double[] Step, double Gain) Step(double damping)
    {
        Vector<double> place = new DenseVector([.. centre.Place]);
        Vector<double> misfit = new DenseVector(residuals.Length > 0 ? [.. residuals] : [0]);
        Vector<double> slope = place + slopes.TransposeThisAndMultiply(misfit);
        Matrix<double> damped = LaplaceBelief.Precision(slopes);
        damped.SetDiagonal(damped.Diagonal() * (1 + damping));
        Vector<double> step = -damped.Cholesky().Solve(slope);
        double longest = step.AbsoluteMaximum();
        return ([.. step.Select(s => longest > LongestStep ? s * LongestStep / longest : s)], -slope.DotProduct(step));
    }

    private Trial Ahead(double damping)
    {
        double[] step = Step(damping).Step;
        double[] place = [.. centre.Place.Select((p, i) => p + step[i])];
        CirculationParameters patient = space.At(place);
        return new Trial(place, patient, forecast.At(centre, place, patient));
    }

    /// <summary>Moves to the best of the trials if it is better than the present place, and learns slopes from all of them.</summary>
    private bool Accept(IReadOnlyList<Trial> trials)
    {
        double present = Objective(centre.Place, residuals);
        (Trial Trial, double[] Misfit, double Objective)[] settled = [.. trials.Where(static t => t.Settled).Select(t =>
        {
            double[] misfit = readings.Residuals(t.State!.RequireSummary());
            return (t, misfit, Objective(t.Place, misfit));
        }).OrderBy(static t => t.Item3)];
        foreach ((Trial trial, double[] misfit, _) in settled.Reverse())
        {
            Learn(trial.Place, misfit);
        }

        double won = settled.Length == 0 ? 0 : present - settled[0].Objective;
        stuck = settled.Length == 0 || settled[0].Objective > present - (SmallGain / 10);
        if (stuck)
        {
            return false;
        }

        (centre, residuals) = (settled[0].Trial, settled[0].Misfit);
        LaplaceBelief belief = new(centre.Place, slopes);
        learnt++;
        stuck = learnt > MostLearnt || won < FairShare * expected;
        exact &= !centre.Place.Where((p, i) => Math.Abs(p - differentiatedAt[i]) > NearEnough * belief.Sd(i)).Any();
        if (exact)
        {
            stuck = false;
        }

        return true;
    }

    private void Learn(double[] place, double[] misfit)
    {
        if (misfit.Length == 0)
        {
            return;
        }

        Vector<double> moved = new DenseVector([.. place.Select((p, i) => p - centre.Place[i])]);
        if (moved.L2Norm() < LeastLearnt)
        {
            return;
        }

        Vector<double> changed = new DenseVector([.. misfit.Select((m, i) => m - residuals[i])]);
        slopes += (changed - (slopes * moved)).OuterProduct(moved) / moved.DotProduct(moved);
    }

    /// <summary>Slopes by differences of a quarter of a standard deviation of the present belief; backward where forward does not settle.</summary>
    private IEnumerable<IReadOnlyList<Trial>> Differentiate()
    {
        bool known = forecast.Known;
        LaplaceBelief? belief = known ? new LaplaceBelief(centre.Place, slopes) : null;
        double[] strides = [.. Enumerable.Range(0, space.Count).Select(i => belief is null ? FirstStride : Math.Max(LeastStride, BeliefStride * belief.Sd(i)))];
        Trial[] forward = [.. Enumerable.Range(0, space.Count).Select(i => Beside(i, centre.Place[i] > 0 ? -strides[i] : strides[i]))];
        yield return forward;
        Trial[] again = [.. Enumerable.Range(0, space.Count).Where(i => !forward[i].Settled)
            .Select(i => Beside(i, -0.5 * (forward[i].Place[i] - centre.Place[i])))];
        if (again.Length > 0)
        {
            yield return again;
        }

        int next = 0;
        Blind.Clear();
        Trial?[] found = new Trial?[space.Count];
        Matrix<double> result = new DenseMatrix(slopes.RowCount, space.Count);
        for (int i = 0; i < space.Count; i++)
        {
            Trial beside = forward[i].Settled ? forward[i] : again[next++];
            if (!beside.Settled)
            {
                Blind.Add(i);
                continue;
            }

            found[i] = beside;
            double[] misfit = readings.Residuals(beside.State!.RequireSummary());
            for (int k = 0; k < misfit.Length; k++)
            {
                result[k, i] = (misfit[k] - residuals[k]) / (beside.Place[i] - centre.Place[i]);
            }
        }

        slopes = result;
        forecast.Learn(centre, found);
        differentiatedAt = centre.Place;
        (exact, stuck, learnt) = (true, false, 0);
    }

    private Trial Beside(int axis, double stride)
    {
        double[] place = [.. centre.Place];
        place[axis] += stride;
        CirculationParameters patient = space.At(place);
        return new Trial(place, patient, forecast.At(centre, place, patient));
    }
}
