using Cavaxis.Blood.Oxygen;
using CsCheck;

namespace Cavaxis.Blood.Tests;

/// <summary>Random blood within the accepted ranges.</summary>
internal static class BloodGen
{
    internal static readonly Gen<BloodConditions> Conditions =
        from pH in Gen.Double[6.8, 7.8]
        from temperature in Gen.Double[15, 42]
        from dpg in Gen.Double[0, 10]
        from pco2 in Gen.Double[15, 120]
        select new BloodConditions(pH, temperature, dpg, pco2);

    internal static readonly Gen<BloodConstants> Constants =
        from huefner in Gen.Double[1.30, 1.40]
        from solubility in Gen.Double[0.0025, 0.0040]
        select new BloodConstants { HuefnerMlPerG = huefner, OxygenSolubilityMlPerDlPerMmHg = solubility };

    internal static readonly Gen<double> Haemoglobin = Gen.Double[0.5, 25];

    internal static readonly Gen<double> Po2 = Gen.Double[0, 700];
}
