using Cavaxis.Anatomy.Body;

namespace Cavaxis.Planning.Case;

/// <summary>Age, sex and size of the patient.</summary>
public sealed record PatientSection
{
    /// <summary>Age in years; months as a fraction.</summary>
    [Meaning("Age in years; months as a fraction.")]
    [Number(0, 110, "a")]
    public required double AgeYears { get; init; }

    /// <summary>Sex as the size tables use it.</summary>
    [Meaning("Sex as the published size tables use it.")]
    public required Sex Sex { get; init; }

    /// <summary>Height in cm.</summary>
    [Meaning("Height or length, cm.")]
    [Number(40, 230, "cm")]
    public required double HeightCm { get; init; }

    /// <summary>Weight in kg.</summary>
    [Meaning("Body weight, kg.")]
    [Number(2, 350, "kg")]
    public required double WeightKg { get; init; }
}
