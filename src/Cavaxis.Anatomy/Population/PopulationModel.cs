using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;

namespace Cavaxis.Anatomy.Population;

/// <summary>What is believed about a patient's axis before anything of it is measured.</summary>
public static class PopulationModel
{
    private const double AgeSlopeFromYears = 25;
    private const double AgeSlopeCentreYears = 40;

    /// <summary>The joint distribution of all dimensions for a body.</summary>
    /// <param name="habitus">Age, sex, height and weight.</param>
    /// <param name="neckEntry">Height of the skin entry on the neck; unknown widens the depth.</param>
    /// <returns>The distribution, nothing measured.</returns>
    public static AxisDistribution For(BodyHabitus habitus, NeckEntry neckEntry = NeckEntry.Unknown)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        int n = AxisDimensions.Count;
        double[] mean = new double[n];
        double[] sd = new double[n];
        for (int i = 0; i < n; i++)
        {
            (mean[i], sd[i]) = Latent(PopulationTable.Rows[i], habitus, neckEntry);
        }

        double[] covariance = CorrelationModel.Matrix();
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                covariance[(i * n) + j] *= sd[i] * sd[j];
            }
        }

        return new AxisDistribution(habitus, neckEntry, mean, covariance);
    }

    private static (double Mean, double Sd) Latent(PopulationParameter row, BodyHabitus habitus, NeckEntry neckEntry)
    {
        if (row.Dimension == AxisDimension.RightNeckSkinToScaj)
        {
            (double middle, double sd) = NeckDepthLaw.DepthMm(habitus, neckEntry);
            return (Math.Log(middle), sd / middle);
        }

        double sizeFactor = Math.Pow(habitus.HeightScale, row.HeightExponent)
            * Math.Pow(BodySurfaceArea.M2(habitus) / PopulationParameter.ReferenceBsaM2, row.BsaExponent);
        double expected = row.AdultMiddle * sizeFactor * SexFactor(row, habitus) * AgeFactor(row, habitus);
        return row.Scale == LatentScale.Logarithmic
            ? (Math.Log(expected), row.Spread)
            : (expected, row.Spread * sizeFactor);
    }

    // The tables give the middle between the sexes, so each sex takes half of the ratio. Children do not differ yet:
    // the femoral artery of men is larger from 25 years on (Sandgren 1999), so the difference grows in from 12 to 25.
    private static double SexFactor(PopulationParameter row, BodyHabitus habitus)
    {
        double grown = Math.Clamp((habitus.AgeYears - 12) / (AgeSlopeFromYears - 12), 0, 1);
        double half = grown * Math.Log(row.FemaleToMale) / 2;
        return Math.Exp(habitus.Sex == Sex.Female ? half : -half);
    }

    private static double AgeFactor(PopulationParameter row, BodyHabitus habitus) =>
        1 + (row.AgeSlopePerYear * (Math.Max(habitus.AgeYears, AgeSlopeFromYears) - AgeSlopeCentreYears));
}
