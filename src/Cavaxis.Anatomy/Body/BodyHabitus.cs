using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Anatomy.Body;

/// <summary>Age, sex and size of one patient, checked once so that every later computation can rely on it.</summary>
public sealed record BodyHabitus
{
    /// <summary>Age from which the adult formulas hold, years.</summary>
    public const double AdultAgeYears = 18;

    /// <summary>Height of the adult that the tables refer to, cm.</summary>
    public const double ReferenceHeightCm = 170;

    private const double LowestBodyMassIndex = 6;
    private const double HighestBodyMassIndex = 120;

    /// <summary>Checks and keeps the four numbers.</summary>
    /// <param name="ageYears">Age, 0 to 110 years; months as a fraction.</param>
    /// <param name="sex">Sex as the size tables use it.</param>
    /// <param name="heightCm">Height or length, 40 to 230 cm.</param>
    /// <param name="weightKg">Weight, 2 to 350 kg.</param>
    /// <exception cref="InputFaultException">A number is out of range, or height and weight cannot belong
    /// together.</exception>
    public BodyHabitus(double ageYears, Sex sex, double heightCm, double weightKg)
    {
        List<InputFault> faults = [];
        Check(ageYears, 0, 110, "ageYears", "Give the age in years, months as a fraction.");
        Check(heightCm, 40, 230, "heightCm", "Give the height or length in centimetres.");
        Check(weightKg, 2, 350, "weightKg", "Give the body weight in kilograms.");
        if (!Enum.IsDefined(sex))
        {
            faults.Add(new InputFault(
                FaultCode.NotAChoice, "sex", ((int)sex).ToString(CultureInfo.InvariantCulture), "Female or Male", "Name the sex."));
        }

        double bodyMassIndex = weightKg / (heightCm * heightCm * 1e-4);
        if (faults.Count == 0 && (bodyMassIndex < LowestBodyMassIndex || bodyMassIndex > HighestBodyMassIndex))
        {
            faults.Add(new InputFault(
                FaultCode.Contradiction,
                "weightKg",
                string.Create(CultureInfo.InvariantCulture, $"{weightKg:G6} kg at {heightCm:G6} cm"),
                $"a body mass index from {LowestBodyMassIndex} to {HighestBodyMassIndex} kg/m2",
                "Check height and weight for a swap or a wrong unit."));
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        (AgeYears, Sex, HeightCm, WeightKg) = (ageYears, sex, heightCm, weightKg);

        void Check(double value, double low, double high, string field, string remedy)
        {
            if (!(value >= low && value <= high))
            {
                faults.Add(Require.OutOfRange(value, low, high, field, remedy));
            }
        }
    }

    /// <summary>Age in years.</summary>
    public double AgeYears { get; }

    /// <summary>Sex as the size tables use it.</summary>
    public Sex Sex { get; }

    /// <summary>Height or length, cm.</summary>
    public double HeightCm { get; }

    /// <summary>Body weight, kg.</summary>
    public double WeightKg { get; }

    /// <summary>Body mass index, kg/m².</summary>
    public double BodyMassIndex => WeightKg / (HeightCm * HeightCm * 1e-4);

    /// <summary>Height against the adult that the tables refer to.</summary>
    public double HeightScale => HeightCm / ReferenceHeightCm;

    /// <summary>Whether the adult formulas hold by age.</summary>
    public bool IsAdult => AgeYears >= AdultAgeYears;
}
