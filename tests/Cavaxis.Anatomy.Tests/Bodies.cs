using Cavaxis.Anatomy.Body;
using CsCheck;

namespace Cavaxis.Anatomy.Tests;

/// <summary>Bodies for tests: one adult and a generator from newborn to adult.</summary>
internal static class Bodies
{
    public static BodyHabitus Adult { get; } = new(45, Sex.Male, 175, 80);

    public static BodyHabitus Newborn { get; } = new(0.01, Sex.Female, 50, 3);

    /// <summary>Age and height drawn apart, weight from a body mass index that goes with anybody.</summary>
    public static Gen<BodyHabitus> Any { get; } =
        from age in Gen.Double[0, 100]
        from female in Gen.Bool
        from height in Gen.Double[48, 200]
        from bodyMassIndex in Gen.Double[12, 40]
        select new BodyHabitus(age, female ? Sex.Female : Sex.Male, height, bodyMassIndex * height * height * 1e-4);
}
