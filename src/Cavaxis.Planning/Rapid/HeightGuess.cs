using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>A height where nobody knows it: wide, and told as a guess.</summary>
internal static class HeightGuess
{
    /// <summary>Where it comes from.</summary>
    public static readonly Source Source = new("usual adult heights and growth charts, rounded", Certainty.FromMemory);

    private const double AdultMaleCm = 175;
    private const double AdultFemaleCm = 162;
    private const double AdultMaleSdCm = 8;
    private const double AdultFemaleSdCm = 7;
    private const double ChildRelativeSd = 0.05;

    // Median length by age in years, both sexes together; straight lines between.
    private static readonly (double AgeYears, double Cm)[] Children =
        [(0, 50), (0.25, 60), (0.5, 67), (1, 75), (2, 87), (3, 95), (4, 102), (5, 109), (6, 115), (8, 127), (10, 138), (12, 149), (14, 160), (16, 167), (18, 169)];

    /// <summary>The guess.</summary>
    /// <param name="ageYears">Age.</param>
    /// <param name="sex">Sex.</param>
    /// <returns>Height in cm with its spread.</returns>
    public static Estimate Of(double ageYears, Sex sex)
    {
        if (ageYears >= BodyHabitus.AdultAgeYears)
        {
            return sex == Sex.Male
                ? Estimate.Normal(AdultMaleCm, AdultMaleSdCm, Origin.Estimated)
                : Estimate.Normal(AdultFemaleCm, AdultFemaleSdCm, Origin.Estimated);
        }

        int above = Array.FindIndex(Children, row => row.AgeYears > ageYears);
        (double age0, double cm0) = Children[above - 1];
        (double age1, double cm1) = Children[above];
        double cm = cm0 + ((ageYears - age0) / (age1 - age0) * (cm1 - cm0));
        return Estimate.Normal(cm, ChildRelativeSd * cm, Origin.Estimated);
    }
}
