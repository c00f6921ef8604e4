using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>What is known within the first minutes. Age, sex and a guess of the weight suffice.</summary>
public sealed record RapidInput
{
    /// <summary>Checks and keeps the three numbers.</summary>
    /// <param name="ageYears">Age, 0 to 110 years.</param>
    /// <param name="sex">Sex as the size tables use it.</param>
    /// <param name="weightKg">Weight as guessed, 2 to 350 kg.</param>
    /// <exception cref="InputFaultException">A number is out of range.</exception>
    public RapidInput(double ageYears, Sex sex, double weightKg) => (AgeYears, Sex, WeightKg) = (
        Require.InRange(ageYears, 0, 110, "ageYears", "Give the age in years, months as a fraction."),
        sex,
        Require.InRange(weightKg, 2, 350, "weightKg", "Give a guess of the weight in kilograms."));

    /// <summary>Age, years.</summary>
    public double AgeYears { get; }

    /// <summary>Sex.</summary>
    public Sex Sex { get; }

    /// <summary>Weight as guessed, kg.</summary>
    public double WeightKg { get; }

    /// <summary>Height, cm, where somebody knows it.</summary>
    public double? HeightCm { get; init; }

    /// <summary>Situations, the leading one first; empty is taken as arrest out of hospital, and told.</summary>
    public IReadOnlyList<RapidSituation> Situations { get; init; } = [];

    /// <summary>The clock.</summary>
    public ArrestClock Clock { get; init; } = ArrestClock.Unknown;

    /// <summary>Answers.</summary>
    public IReadOnlyList<RapidAnswer> Answers { get; init; } = [];

    /// <summary>Vessels that were looked at.</summary>
    public IReadOnlyList<VesselEntry> Vessels { get; init; } = [];

    /// <summary>Seed of the sampled anatomies.</summary>
    public ulong Seed { get; init; } = 1;
}
