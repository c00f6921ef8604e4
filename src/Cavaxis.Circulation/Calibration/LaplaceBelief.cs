using Cavaxis.Anatomy.Sampling;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Cavaxis.Circulation.Calibration;

/// <summary>
/// Belief after the readings, normal around the best place (Laplace's approximation): precision I + JᵀJ, where the prior is standard normal
/// and J holds the slopes of the residuals.
/// </summary>
internal sealed class LaplaceBelief
{
    private readonly Matrix<double> factor;

    /// <summary>Computes the belief.</summary>
    /// <param name="best">Best place.</param>
    /// <param name="slopes">Slopes of the residuals, one row for each reading.</param>
    public LaplaceBelief(double[] best, Matrix<double> slopes)
    {
        Best = best;
        Matrix<double> precision = Precision(slopes);
        factor = precision.Cholesky().Factor;
        Covariance = precision.Cholesky().Solve(DenseMatrix.CreateIdentity(best.Length));

        // Covariance of the residuals at the best place if prior and spreads are right: (I + JJᵀ)⁻¹.
        ResidualCovariance = (DenseMatrix.CreateIdentity(slopes.RowCount) + slopes.TransposeAndMultiply(slopes)).Cholesky()
            .Solve(DenseMatrix.CreateIdentity(slopes.RowCount));
    }

    /// <summary>Best place.</summary>
    public double[] Best { get; }

    /// <summary>Covariance around it, in prior standard deviations.</summary>
    public Matrix<double> Covariance { get; }

    /// <summary>Covariance that the residuals are expected to have.</summary>
    public Matrix<double> ResidualCovariance { get; }

    /// <summary>Precision of the belief after the readings.</summary>
    /// <param name="slopes">Slopes of the residuals.</param>
    /// <returns>I + JᵀJ.</returns>
    public static Matrix<double> Precision(Matrix<double> slopes) =>
        DenseMatrix.CreateIdentity(slopes.ColumnCount) + slopes.TransposeThisAndMultiply(slopes);

    /// <summary>Standard deviation in a direction.</summary>
    /// <param name="axis">Direction.</param>
    /// <returns>In prior standard deviations.</returns>
    public double Sd(int axis) => Math.Sqrt(Covariance[axis, axis]);

    /// <summary>One draw.</summary>
    /// <param name="member">Which; the same member of the same seed is always the same draw.</param>
    /// <param name="seed">Seed.</param>
    /// <returns>Place.</returns>
    public double[] Draw(int member, ulong seed)
    {
        // With precision LLᵀ, Lᵀx = e gives x the covariance (LLᵀ)⁻¹.
        Vector<double> normal = new DenseVector([.. Enumerable.Range(0, Best.Length).Select(i => Normal01(member, i, seed))]);
        Vector<double> away = factor.Transpose().Solve(normal);
        return [.. Best.Select((b, i) => b + away[i])];
    }

    /// <summary>A standard normal number that belongs to a member and a direction.</summary>
    /// <param name="member">Member.</param>
    /// <param name="axis">Direction.</param>
    /// <param name="seed">Seed.</param>
    /// <returns>The number.</returns>
    public static double Normal01(int member, int axis, ulong seed)
    {
        (uint high, uint low, _, _) = Philox.Bits((uint)axis, (uint)member, 0, 0, seed);
        double uniform = ((((ulong)high << 21) ^ (low >> 11)) + 0.5) / 9007199254740992.0;
        return Normal.InvCDF(0, 1, uniform);
    }
}
