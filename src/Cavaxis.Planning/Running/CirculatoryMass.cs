using Cavaxis.Anatomy.Body;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>
/// The body mass that the circulation is scaled to. Fat carries less blood than other tissue, so the scale is not the weight: it is the mass
/// at which the table's adult would have this patient's blood volume.
/// </summary>
public static class CirculatoryMass
{
    /// <summary>Where the rules come from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Nadler et al. 1962, Surgery 51:224, blood volume of adults from height, weight and sex, as written in public code", Certainty.SeenSecondHand),
        new("Lemmens et al. 2006, Obes Surg 16:773, blood volume per kg falls with the root of the body mass index over 22; used below 18 years", Certainty.FromMemory),
    ];

    private const double LeanBodyMassIndex = 22;

    /// <summary>Adults: blood volume after Nadler over that of the table for a kilogram. Younger: weight, times the root of 22 over the body mass index where that is above 22.</summary>
    /// <param name="habitus">Age, sex and size.</param>
    /// <returns>Mass in kg, from 1 to 300.</returns>
    public static double Kg(BodyHabitus habitus)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        if (habitus.IsAdult)
        {
            ParameterDefinition volume = ParameterTable.Of(CirculationParameter.BloodVolumeMl);
            return Math.Clamp(AdultBloodVolumeMl(habitus) / (volume.Value / ParameterTable.ReferenceMassKg), 1, 300);
        }

        double excess = Math.Max(1, habitus.BodyMassIndex / LeanBodyMassIndex);
        return Math.Clamp(habitus.WeightKg / Math.Sqrt(excess), 1, 300);
    }

    /// <summary>Blood volume of an adult after Nadler: cubic in height, linear in weight.</summary>
    /// <param name="habitus">Age, sex and size.</param>
    /// <returns>Volume, mL.</returns>
    public static double AdultBloodVolumeMl(BodyHabitus habitus)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        double height = habitus.HeightCm / 100;
        double cube = height * height * height;
        return 1000 * (habitus.Sex == Sex.Male
            ? (0.3669 * cube) + (0.03219 * habitus.WeightKg) + 0.6041
            : (0.3561 * cube) + (0.03308 * habitus.WeightKg) + 0.1833);
    }
}
