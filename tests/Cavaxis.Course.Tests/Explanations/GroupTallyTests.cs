using Cavaxis.Course.Explanations.Reasoning;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Cavaxis.Course.Tests.Explanations;

public class GroupTallyTests
{
    // Reference: Student's density of a general numerical library.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(2.3, 0.7)]
    [InlineData(-40, 3)]
    public void One_sign_alone_has_the_density_of_Student(double residual, double scale) => Assert.Equal(
        StudentT.PDFLn(0, scale, GroupTally.Freedom, residual), new GroupTally(0.4, 0, 0, 0, 0).With(residual, scale, -1).LogDensity(), 10);

    // Reference: ln Γ((ν+n)/2) − ln Γ(ν/2) − n/2 ln(νπ) − ½ ln|Σ| − (ν+n)/2 ln(1 + xᵀΣ⁻¹x/ν) with the matrix written out and inverted by the library.
    [Theory]
    [InlineData(0.5, 2)]
    [InlineData(0.4, 3)]
    [InlineData(0.7, 4)]
    [InlineData(0.3, 5)]
    public void A_group_has_the_density_of_the_full_matrix(double correlation, int count)
    {
        double[] residuals = [1.2, -0.4, 3, 7.5, -2];
        double[] scales = [0.5, 1, 2.5, 4, 0.3];
        int[] directions = [1, -1, 1, 1, -1];
        GroupTally tally = new(correlation, 0, 0, 0, 0);
        for (int i = 0; i < count; i++)
        {
            tally = tally.With(residuals[i], scales[i], directions[i]);
        }

        Matrix<double> covariance = Matrix<double>.Build.Dense(
            count, count, (i, j) => scales[i] * scales[j] * (i == j ? 1 : correlation * directions[i] * directions[j]));
        Vector<double> x = Vector<double>.Build.Dense(count, i => residuals[i]);
        double nu = GroupTally.Freedom;
        double expected = SpecialFunctions.GammaLn(0.5 * (nu + count)) - SpecialFunctions.GammaLn(0.5 * nu) - (0.5 * count * Math.Log(nu * Math.PI))
            - (0.5 * Math.Log(covariance.Determinant())) - (0.5 * (nu + count) * Math.Log(1 + (x * covariance.Inverse() * x / nu)));
        Assert.Equal(expected, tally.LogDensity(), 9);
    }

    [Fact]
    public void Three_signs_of_one_line_tell_less_than_three_of_different_lines()
    {
        static double Evidence(double correlation)
        {
            GroupTally Of(double shift) => new GroupTally(correlation, 0, 0, 0, 0).With(2 - shift, 1, 1).With(2 - shift, 1, 1).With(2 - shift, 1, 1);
            return Of(2).LogDensity() - Of(0).LogDensity();
        }

        double alone = new GroupTally(0, 0, 0, 0, 0).With(0, 1, 1).LogDensity() - new GroupTally(0, 0, 0, 0, 0).With(2, 1, 1).LogDensity();
        Assert.InRange(Evidence(0.6), alone, 3 * alone);
        Assert.True(Evidence(0.6) < Evidence(0.001));
    }
}
