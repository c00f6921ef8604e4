using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.MembraneLungs;

/// <summary>
/// A membrane lung described by its rated flow, its pressure drop and its carbon dioxide conductance. Ageing, clot and condensed
/// water are not in the numbers. Equations and their standing in <c>docs/models/devices.md</c>.
/// </summary>
/// <param name="Id">Unique lower-case identifier in the catalogue.</param>
/// <param name="Description">What it is, in plain words, without any maker's name.</param>
/// <param name="RatedFlowLPerMin">Flow at which blood of 75 % saturation and 12 g/dL leaves with 95 %, on pure oxygen.</param>
/// <param name="LowestFlowLPerMin">Lowest flow it is meant for.</param>
/// <param name="HighestFlowLPerMin">Highest flow it is meant for.</param>
/// <param name="LinearMmHgPerLPerMin">Viscous part of the drop with a liquid of 3 mPa s.</param>
/// <param name="QuadraticMmHgPerLPerMin2">Inertial part of the drop with a liquid of 1060 kg/m³.</param>
/// <param name="CarbonDioxideConductance">Diffusing conductance for CO₂, mL/min (standard) per mmHg.</param>
/// <param name="PrimingVolumeMl">Volume of the blood side.</param>
/// <param name="Source">Where the numbers come from.</param>
public sealed record MembraneLung(
    string Id,
    string Description,
    double RatedFlowLPerMin,
    double LowestFlowLPerMin,
    double HighestFlowLPerMin,
    double LinearMmHgPerLPerMin,
    double QuadraticMmHgPerLPerMin2,
    double CarbonDioxideConductance,
    double PrimingVolumeMl,
    Source Source)
{
    /// <summary>Haemoglobin of the rating blood, g/dL.</summary>
    public const double RatingHaemoglobinGPerDl = 12;

    /// <summary>Inlet saturation of the rating blood.</summary>
    public const double RatingInletSaturation = 0.75;

    /// <summary>Outlet saturation that defines the rated flow.</summary>
    public const double RatingOutletSaturation = 0.95;

    /// <summary>Oxygen bound by a gram of haemoglobin, mL/g; the traditional figure, as the rating is usually computed.</summary>
    public const double OxygenCapacityMlPerG = 1.34;

    /// <summary>Dry barometric pressure at body temperature, 760 − 47 mmHg.</summary>
    public const double DryPressureMmHg = 713;

    private const double VenousPo2MmHg = 40;
    private const double ReferenceViscosityPaS = 3e-3;
    private const double ReferenceDensityKgPerM3 = 1060;

    // Sweep gas is metered dry at 20 °C and 760 mmHg; transfer is counted at 0 °C.
    private const double StandardPerMetered = 273.15 / 293.15;

    /// <summary>Pressure drop of the blood side: a viscous part with flow and viscosity, an inertial part with flow squared and density.</summary>
    /// <param name="flowLPerMin">Flow, 0 to 15 L/min.</param>
    /// <param name="fluid">The liquid.</param>
    /// <returns>Pressure drop, Pa.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public double DropPa(double flowLPerMin, Fluid fluid)
    {
        CheckFlow(flowLPerMin, 0);
        LumenHydraulics.CheckFluid(fluid);
        double viscous = LinearMmHgPerLPerMin * flowLPerMin * fluid.ViscosityPaS / ReferenceViscosityPaS;
        double inertial = QuadraticMmHgPerLPerMin2 * flowLPerMin * flowLPerMin * fluid.DensityKgPerM3 / ReferenceDensityKgPerM3;
        return (viscous + inertial) * UnitFactors.PascalsPerMmHg;
    }

    /// <summary>
    /// Oxygen transfer: the unsaturated fraction falls as exp(−N). N is fixed by the rating (ln 5 at rated flow), grows as
    /// (rated flow/flow)^(2/3) as in a laminar concentration boundary layer, with the gas-side driving pressure, and with 12/Hb.
    /// </summary>
    /// <param name="flowLPerMin">Blood flow, 0.05 to 15 L/min.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 25 g/dL.</param>
    /// <param name="inletSaturation">Saturation before the lung, 0 to 1.</param>
    /// <param name="oxygenFraction">Oxygen fraction of the sweep gas, 0.21 to 1.</param>
    /// <returns>Transfer and outlet saturation.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public OxygenTransfer Oxygen(double flowLPerMin, double haemoglobinGPerDl, double inletSaturation, double oxygenFraction)
    {
        CheckFlow(flowLPerMin, 0.05);
        Require.InRange(haemoglobinGPerDl, 3, 25, "haemoglobinGPerDl", "Give haemoglobin in g/dL.");
        Require.InRange(inletSaturation, 0, 1, "inletSaturation", "Give the saturation as a fraction.");
        Require.InRange(oxygenFraction, 0.21, 1, "oxygenFraction", "Give the oxygen fraction of the sweep gas.");
        double atRating = Math.Log((1 - RatingInletSaturation) / (1 - RatingOutletSaturation));
        double drive = ((oxygenFraction * DryPressureMmHg) - VenousPo2MmHg) / (DryPressureMmHg - VenousPo2MmHg);
        double units = atRating * Math.Pow(RatedFlowLPerMin / flowLPerMin, 2.0 / 3.0) * drive
            * RatingHaemoglobinGPerDl / haemoglobinGPerDl;
        double outlet = 1 - ((1 - inletSaturation) * Math.Exp(-units));
        double perSaturation = flowLPerMin * 10 * OxygenCapacityMlPerG * haemoglobinGPerDl;
        return new OxygenTransfer(perSaturation * (outlet - inletSaturation), outlet, perSaturation * (1 - inletSaturation));
    }

    /// <summary>
    /// Carbon dioxide removal: gas carry-off and membrane in series, VCO₂ = P / (713/V + 1/D), where P is the mean blood PCO₂ in the
    /// lung and V the sweep at standard conditions, free of CO₂ on entry.
    /// </summary>
    /// <param name="sweepLPerMin">Sweep gas flow, dry at 20 °C, 0 to 20 L/min.</param>
    /// <param name="meanBloodPco2MmHg">Mean of the PCO₂ of the blood entering and leaving, 5 to 150 mmHg.</param>
    /// <returns>CO₂ removed, mL/min at standard conditions.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public double CarbonDioxideMlPerMin(double sweepLPerMin, double meanBloodPco2MmHg)
    {
        Require.InRange(sweepLPerMin, 0, 20, "sweepLPerMin", "Give the sweep gas flow.");
        Require.InRange(meanBloodPco2MmHg, 5, 150, "meanBloodPco2MmHg", "Give the mean PCO2 of the blood in the lung.");
        double sweep = sweepLPerMin * 1000 * StandardPerMetered;
        return sweep == 0 ? 0 : meanBloodPco2MmHg / ((DryPressureMmHg / sweep) + (1 / CarbonDioxideConductance));
    }

    /// <summary>Sweep gas flow that removes a given amount of carbon dioxide: the inverse of <see cref="CarbonDioxideMlPerMin"/>.</summary>
    /// <param name="carbonDioxideMlPerMin">CO₂ to remove, 0 to 1000 mL/min at standard conditions.</param>
    /// <param name="meanBloodPco2MmHg">Mean of the PCO₂ of the blood entering and leaving, 5 to 150 mmHg.</param>
    /// <returns>Sweep in L/min, or null when the membrane cannot pass that much at any sweep up to 20 L/min.</returns>
    /// <exception cref="InputFaultException">A number is outside what can be computed.</exception>
    public double? SweepFor(double carbonDioxideMlPerMin, double meanBloodPco2MmHg)
    {
        Require.InRange(carbonDioxideMlPerMin, 0, 1000, "carbonDioxideMlPerMin", "Give the CO2 to remove.");
        Require.InRange(meanBloodPco2MmHg, 5, 150, "meanBloodPco2MmHg", "Give the mean PCO2 of the blood in the lung.");
        if (carbonDioxideMlPerMin == 0)
        {
            return 0;
        }

        double gasSide = (meanBloodPco2MmHg / carbonDioxideMlPerMin) - (1 / CarbonDioxideConductance);
        double sweep = gasSide > 0 ? DryPressureMmHg / gasSide / (1000 * StandardPerMetered) : double.PositiveInfinity;
        return sweep <= 20 ? sweep : null;
    }

    private static void CheckFlow(double flowLPerMin, double low) =>
        Require.InRange(flowLPerMin, low, 15, "flowLPerMin", "Give a flow that a circuit can carry.");
}
