using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;
using static Cavaxis.Anatomy.Axis.AxisDimension;
using static Cavaxis.Anatomy.Population.AxisFactor;

namespace Cavaxis.Anatomy.Population;

/// <summary>
/// Correlation of the dimensions around their expected values: R = Λ Λᵀ + Ψ, with Λ the loadings on shared causes and Ψ
/// the
/// rest of each variance. Because every dimension keeps a rest above zero, R is positive definite by construction.
/// No published correlation matrix of these dimensions was found; the loadings are assumptions.
/// </summary>
public static class CorrelationModel
{
    /// <summary>Where the loadings come from.</summary>
    public static Source Source { get; } = new(
        "no published matrix; sides alike in arteries and femoral veins, loosely in jugular veins; ways contain their parts", Certainty.Assumption);

    /// <summary>Every loading that is not zero.</summary>
    public static IReadOnlyList<FactorLoading> Loadings { get; } =
    [
        .. On(
            BodySize, 0.3, RightNeckSkinToScaj, SvcLength, AtrialSpan, IcajToHepaticVein, IcajToRenalVein,
            RenalVeinToIliacConfluence, RightGroinSkinToIcaj),
        .. On(
            BodySize, 0.3, TricuspidDistance, TricuspidDiameter, SvcDiameter, IvcDiameter, RightJugularVeinDiameter,
            LeftJugularVeinDiameter),
        .. On(
            BodySize, 0.3, RightFemoralVeinDiameter, LeftFemoralVeinDiameter, RightFemoralArteryDiameter,
            LeftFemoralArteryDiameter),
        .. On(BodySize, 0.3, RightAxillaryArteryDiameter, LeftAxillaryArteryDiameter, RightCarotidArteryDiameter),
        .. On(VenousFilling, 0.5, SvcDiameter, IvcDiameter, RightJugularVeinDiameter, LeftJugularVeinDiameter),
        .. On(VenousFilling, 0.4, RightFemoralVeinDiameter, LeftFemoralVeinDiameter),
        .. On(
            ArterialCalibre, 0.5, RightFemoralArteryDiameter, LeftFemoralArteryDiameter, RightAxillaryArteryDiameter,
            LeftAxillaryArteryDiameter, RightCarotidArteryDiameter),
        .. On(HeartSize, 0.5, AtrialSpan, TricuspidDistance, TricuspidDiameter),
        .. On(HeartSize, 0.3, SvcDiameter, IvcDiameter),
        .. On(ThoracicLength, 0.6, RightNeckSkinToScaj, SvcLength),
        .. On(AbdominalLength, 0.65, IcajToRenalVein, RightGroinSkinToIcaj),
        .. On(AbdominalLength, 0.5, IcajToHepaticVein, RenalVeinToIliacConfluence),
        .. On(JugularPair, 0.4, RightJugularVeinDiameter, LeftJugularVeinDiameter),
        .. On(FemoralVeinPair, 0.72, RightFemoralVeinDiameter, LeftFemoralVeinDiameter),
        .. On(FemoralArteryPair, 0.7, RightFemoralArteryDiameter, LeftFemoralArteryDiameter),
        .. On(AxillaryArteryPair, 0.7, RightAxillaryArteryDiameter, LeftAxillaryArteryDiameter),
    ];

    /// <summary>The correlation matrix, row by row, in the order of <see cref="AxisDimension"/>.</summary>
    /// <returns>A fresh matrix of <see cref="AxisDimensions.Count"/> squared numbers.</returns>
    public static double[] Matrix()
    {
        int n = AxisDimensions.Count;
        int factors = Enum.GetValues<AxisFactor>().Length;
        double[] loading = new double[n * factors];
        foreach (FactorLoading entry in Loadings)
        {
            loading[((int)entry.Dimension * factors) + (int)entry.Factor] = entry.Loading;
        }

        double[] matrix = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                double sum = 0;
                for (int f = 0; f < factors; f++)
                {
                    sum += loading[(i * factors) + f] * loading[(j * factors) + f];
                }

                matrix[(i * n) + j] = i == j ? 1 : sum;
            }
        }

        return matrix;
    }

    private static IEnumerable<FactorLoading> On(
        AxisFactor factor, double loading, params AxisDimension[] dimensions) =>
        dimensions.Select(dimension => new FactorLoading(factor, dimension, loading));
}
