using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Population;

/// <summary>
/// One row of the population table: how the middle and the spread of a dimension follow from the body. Middle =
/// AdultMiddle × (height/170 cm)^HeightExponent × (BSA/1.80 m²)^BsaExponent × sex factor × age factor, where the sex
/// factor is FemaleToMale^±½ and the age factor is 1 + AgeSlopePerYear × (age − 40) from 25 years on. The depth from
/// the neck has a law of its own, <see cref="NeckDepthLaw"/>; its row holds the adult anchor for the reader.
/// </summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="AdultMiddle">Median (logarithmic) or mean (plain) at 170 cm and 1.80 m², between the sexes; mm, degrees
/// or 1.</param>
/// <param name="Spread">Standard deviation: relative (logarithmic) or in the dimension's unit at 170 cm
/// (plain).</param>
/// <param name="HeightExponent">Power of height/170 cm.</param>
/// <param name="BsaExponent">Power of BSA/1.80 m².</param>
/// <param name="FemaleToMale">Ratio of the female to the male middle at equal size.</param>
/// <param name="AgeSlopePerYear">Relative growth per year of adult life.</param>
/// <param name="Source">Source of middle and spread in adults.</param>
/// <param name="GrowthSource">Source of the child scaling.</param>
public sealed record PopulationParameter(
    AxisDimension Dimension,
    double AdultMiddle,
    double Spread,
    double HeightExponent,
    double BsaExponent,
    double FemaleToMale,
    double AgeSlopePerYear,
    Source Source,
    Source GrowthSource)
{
    /// <summary>Body surface area of the reference adult, m².</summary>
    public const double ReferenceBsaM2 = 1.80;

    /// <summary>Scale on which the dimension is Gaussian.</summary>
    public LatentScale Scale => AxisDimensions.ScaleOf(Dimension);

    /// <summary>Unit of the dimension.</summary>
    public string Unit => AxisDimensions.UnitOf(Dimension);
}
