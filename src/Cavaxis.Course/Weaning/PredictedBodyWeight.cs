using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Weaning;

/// <summary>Body weight predicted from height and sex, over which a tidal volume is read.</summary>
public static class PredictedBodyWeight
{
    private const double YoungestYears = 16;

    /// <summary>Shortest height for which the line is used, cm: below it the weight falls towards nothing.</summary>
    private const double ShortestCm = 130;

    /// <summary>The weight. Men 50 + 0.91 (height − 152.4), women 45.5 + 0.91 (height − 152.4), in kg and cm (ARDS Network 2000, N Engl J Med 342:1301; from memory).</summary>
    /// <param name="patient">The patient.</param>
    /// <returns>kg; null for children and for heights at which the line was not drawn.</returns>
    public static double? KgOf(PatientSection patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return patient.AgeYears < YoungestYears || patient.HeightCm < ShortestCm ? null : (patient.Sex == Sex.Male ? 50 : 45.5) + (0.91 * (patient.HeightCm - 152.4));
    }
}
