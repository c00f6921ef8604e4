using Cavaxis.Circulation.Calibration;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Cavaxis.Circulation.Tests.Calibration;

public class LaplaceBeliefTests
{
    [Fact]
    public void One_reading_of_one_number_narrows_as_the_closed_form_says()
    {
        // Prior variance 1, reading of variance 1/4: posterior variance 1/(1 + 4).
        LaplaceBelief belief = new([0], new DenseMatrix(1, 1, [2]));
        Assert.Equal(1.0 / 5, belief.Covariance[0, 0], 1e-12);
        Assert.Equal(1.0 / 5, belief.ResidualCovariance[0, 0], 1e-12);
    }

    [Fact]
    public void A_number_that_no_reading_depends_on_keeps_its_prior_spread()
    {
        LaplaceBelief belief = new([0, 0], new DenseMatrix(1, 2, [3, 0]));
        Assert.Equal(1, belief.Sd(1), 1e-12);
        Assert.Equal(Math.Sqrt(0.1), belief.Sd(0), 1e-12);
    }

    [Fact]
    public void Two_numbers_seen_only_as_a_sum_are_tied()
    {
        // Precision [[1 + s, s], [s, 1 + s]]: covariance off the diagonal −s/(1 + 2s).
        LaplaceBelief belief = new([0, 0], new DenseMatrix(1, 2, [10, 10]));
        Assert.Equal(-100.0 / 201, belief.Covariance[0, 1], 1e-12);
        Assert.Equal(101.0 / 201, belief.Covariance[0, 0], 1e-12);
    }

    [Fact]
    public void Draws_have_the_mean_and_the_covariance_of_the_belief()
    {
        LaplaceBelief belief = new([0.5, -1], new DenseMatrix(1, 2, [2, 1]));
        const int many = 20_000;
        double[][] draws = [.. Enumerable.Range(0, many).Select(m => belief.Draw(m, 3))];
        for (int i = 0; i < 2; i++)
        {
            // Five standard errors of a mean and of a covariance of near-unit numbers.
            Assert.Equal(belief.Best[i], draws.Average(d => d[i]), 5 / Math.Sqrt(many));
            for (int j = 0; j < 2; j++)
            {
                double covariance = draws.Average(d => (d[i] - belief.Best[i]) * (d[j] - belief.Best[j]));
                Assert.Equal(belief.Covariance[i, j], covariance, 10 / Math.Sqrt(many));
            }
        }
    }

    [Fact]
    public void The_residual_is_judged_as_if_its_reading_had_been_left_out()
    {
        // Linear model, three readings of two numbers: predict the last from the others and compare.
        Matrix<double> slopes = DenseMatrix.OfArray(new double[,] { { 2, 1 }, { 0.5, -1 }, { 1, 1.5 } });
        Vector<double> atPrior = new DenseVector([1.2, -0.4, 2.5]);
        Vector<double> best = -LaplaceBelief.Precision(slopes).Inverse() * slopes.TransposeThisAndMultiply(atPrior);
        LaplaceBelief belief = new([.. best], slopes);
        double residual = (atPrior + (slopes * best))[2];
        double judged = residual / Math.Sqrt(belief.ResidualCovariance[2, 2]);

        Matrix<double> others = slopes.SubMatrix(0, 2, 0, 2);
        Matrix<double> without = LaplaceBelief.Precision(others).Inverse();
        Vector<double> bestWithout = -without * others.TransposeThisAndMultiply(atPrior.SubVector(0, 2));
        Vector<double> row = slopes.Row(2);
        double predicted = (atPrior[2] + row.DotProduct(bestWithout)) / Math.Sqrt(1 + row.DotProduct(without * row));
        Assert.Equal(predicted, judged, 1e-10);
    }
}
