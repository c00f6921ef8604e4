using Cavaxis.Circulation.Parameters;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Cavaxis.Circulation.Calibration;

/// <summary>
/// Belief with slopes that hold over its own width. Slopes at the best place alone say too much where a reading bends with a number; so the
/// circulations on both sides of the best place along each principal axis of that first belief are asked for, and the secants between them are the slopes.
/// </summary>
internal sealed class BeliefSides
{
    // Distance of the two sides from the best place, in standard deviations of the first belief: the middle of a twentieth at each end is at 1.6.
    private const double Side = 1.5;

    private readonly SearchSpace space;
    private readonly ReadingSet readings;
    private readonly Trial best;
    private readonly double[] residuals;
    private readonly Matrix<double> slopes;
    private readonly Matrix<double> axes;
    private readonly Matrix<double> inverse;

    /// <summary>Prepares.</summary>
    /// <param name="space">What was searched.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="best">Best place, settled.</param>
    /// <param name="residuals">Residuals there.</param>
    /// <param name="slopes">Slopes of the residuals there.</param>
    public BeliefSides(SearchSpace space, ReadingSet readings, Trial best, double[] residuals, Matrix<double> slopes)
    {
        (this.space, this.readings, this.best, this.residuals, this.slopes) = (space, readings, best, residuals, slopes);
        Evd<double> evd = LaplaceBelief.Precision(slopes).Evd(Symmetricity.Symmetric);
        Matrix<double> Length(double power) => DenseMatrix.CreateDiagonal(space.Count, space.Count, i => Math.Pow(evd.EigenValues[i].Real, power));
        axes = evd.EigenVectors * Length(-0.5);
        inverse = Length(0.5) * evd.EigenVectors.Transpose();
    }

    /// <summary>The circulations that are wanted: lower and upper side of each axis in turn.</summary>
    /// <param name="forecast">Guesses their states.</param>
    /// <returns>Trials.</returns>
    public Trial[] Trials(StateForecast forecast) => [.. Enumerable.Range(0, 2 * space.Count).Select(i =>
    {
        double stride = i % 2 == 0 ? -Side : Side;
        double[] place = [.. best.Place.Select((p, row) => p + (stride * axes[row, i / 2]))];
        CirculationParameters patient = space.At(place);
        return new Trial(place, patient, forecast.At(best, place, patient));
    })];

    /// <summary>The belief, when the circulations are settled. Where a side did not settle the slope is that of the other side, else that of the best place.</summary>
    /// <param name="trials">The circulations.</param>
    /// <returns>Belief around the place where prior and readings balance with these slopes.</returns>
    public LaplaceBelief Belief(IReadOnlyList<Trial> trials)
    {
        Matrix<double> secants = slopes * axes;
        if (residuals.Length > 0)
        {
            for (int k = 0; k < space.Count; k++)
            {
                (Trial lower, Trial upper) = (trials[2 * k], trials[(2 * k) + 1]);
                double width = (lower.Settled ? Side : 0) + (upper.Settled ? Side : 0);
                if (width > 0)
                {
                    Vector<double> rise = new DenseVector(Of(upper)) - new DenseVector(Of(lower));
                    secants.SetColumn(k, rise / width);
                }
            }
        }

        Matrix<double> wide = secants * inverse;
        Vector<double> place = new DenseVector([.. best.Place]);
        Vector<double> slope = place + wide.TransposeThisAndMultiply(new DenseVector(residuals.Length > 0 ? [.. residuals] : [0]));
        return new LaplaceBelief([.. place - LaplaceBelief.Precision(wide).Cholesky().Solve(slope)], wide);
    }

    private double[] Of(Trial trial) => trial.Settled ? readings.Residuals(trial.State!.RequireSummary()) : residuals;
}
