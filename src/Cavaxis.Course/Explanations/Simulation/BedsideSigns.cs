using Cavaxis.Blood.Oxygen;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Course.Observations;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Course.Explanations.Simulation;

/// <summary>What would be read at the bedside of a settled circulation. Only what the model knows; everything else is left out.</summary>
public static class BedsideSigns
{
    /// <summary>Share of arterial blood in what a tissue oximeter sees, the rest venous. From memory: 25 to 75 is the usual calibration.</summary>
    private const double ArterialShareOfTissue = 0.25;

    /// <summary>Annulus velocity for each percent of ejection fraction, cm/s: about 9 cm/s at 60 %. Common practice, no source.</summary>
    private const double VelocityPerPercent = 0.15;

    /// <summary>Bicarbonate at which pH follows from the carbon dioxide tension: changes within a day hardly alter it. Assumption.</summary>
    private const double BicarbonateMmolPerL = 25;

    private const double CarbonicPk = 6.1;
    private const double CarbonicMmolPerLPerMmHg = 0.0307;

    private static readonly (ObservedQuantity Observed, CirculationQuantity Computed)[] Same =
    [
        (MeanArterialPressureMmHg, CirculationQuantity.MeanArterialPressureMmHg),
        (SystolicPressureMmHg, CirculationQuantity.SystolicPressureMmHg),
        (DiastolicPressureMmHg, CirculationQuantity.DiastolicPressureMmHg),
        (CentralVenousPressureMmHg, CirculationQuantity.CentralVenousPressureMmHg),
        (PulmonaryArteryMeanMmHg, CirculationQuantity.PulmonaryArteryMeanMmHg),
        (PulmonaryArterySystolicMmHg, CirculationQuantity.PulmonaryArterySystolicMmHg),
        (PulmonaryArteryDiastolicMmHg, CirculationQuantity.PulmonaryArteryDiastolicMmHg),
        (WedgePressureMmHg, CirculationQuantity.WedgePressureMmHg),
        (HeartRatePerMin, CirculationQuantity.HeartRatePerMin),
        (OutflowVtiCm, CirculationQuantity.OutflowVelocityTimeIntegralCm),
        (EjectionFractionPercent, CirculationQuantity.LeftVentricularEjectionFractionPercent),
        (CardiacOutputLPerMin, CirculationQuantity.NativeOutputLPerMin),
        (AorticValveOpenPercent, CirculationQuantity.AorticValveOpenPercent),
        (RightArmSaturationPercent, CirculationQuantity.RightArmSaturationPercent),
        (RightArmPo2MmHg, CirculationQuantity.RightArmPo2MmHg),
        (RightArmPco2MmHg, CirculationQuantity.RightArmPco2MmHg),
        (LegSaturationPercent, CirculationQuantity.LowerBodySaturationPercent),
        (PulmonaryArterySaturationPercent, CirculationQuantity.PulmonaryArterySaturationPercent),
        (CentralVenousSaturationPercent, CirculationQuantity.VenousSaturationPercent),
        (PumpFlowLPerMin, CirculationQuantity.PumpFlowLPerMin),
        (InletPressureMmHg, CirculationQuantity.InletPressureMmHg),
        (PreMembranePressureMmHg, CirculationQuantity.OutletPressureMmHg),
        (PreMembraneSaturationPercent, CirculationQuantity.PreMembraneSaturationPercent),
        (PostMembraneSaturationPercent, CirculationQuantity.PostMembraneSaturationPercent),
        (RecirculationPercent, CirculationQuantity.RecirculationPercent),
    ];

    /// <summary>Reads a settled circulation.</summary>
    /// <param name="state">It.</param>
    /// <returns>Values in the units of the quantities.</returns>
    /// <exception cref="NotSettledException">It has not settled.</exception>
    public static IReadOnlyDictionary<ObservedQuantity, double> Read(SettledState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        CirculationSummary summary = state.RequireSummary();
        BreathRecord breath = state.RequireBreath();
        CirculationParameters p = state.Parameters;
        Dictionary<ObservedQuantity, double> signs = [];
        foreach ((ObservedQuantity observed, CirculationQuantity computed) in Same)
        {
            signs[observed] = summary[computed];
        }

        double flow = signs[PumpFlowLPerMin];
        double venous = signs[CentralVenousSaturationPercent];
        signs[PostMembranePressureMmHg] = signs[PreMembranePressureMmHg] - (flow * p[CirculationParameter.ReturnLinearMmHgPerLPerMin]);
        signs[LeftVentricularDiameterMm] = DiameterMm(summary[CirculationQuantity.LeftVentricularEndDiastolicVolumeMl]);
        signs[LateralMitralVelocityCmPerS] = VelocityPerPercent * signs[EjectionFractionPercent];
        signs[AbdominalPressureMmHg] = p[CirculationParameter.AbdominalPressureMmHg];
        signs[PlateauPressureCmH2O] = p[CirculationParameter.PeepCmH2O] + p[CirculationParameter.AlveolarSwingCmH2O];
        signs[RightArmPh] = CarbonicPk + Math.Log10(BicarbonateMmolPerL / (CarbonicMmolPerLPerMmHg * signs[RightArmPco2MmHg]));
        signs[CerebralSaturationPercent] = Tissue(signs[RightArmSaturationPercent], venous);
        signs[CannulatedLimbSaturationPercent] = Tissue(signs[LegSaturationPercent], venous);
        signs[OtherLimbSaturationPercent] = signs[CannulatedLimbSaturationPercent];
        signs[PreMembranePo2MmHg] = Po2(p, breath.Mean(Signal.PreMembraneOxygen));
        signs[PostMembranePo2MmHg] = Po2(p, breath.Mean(Signal.PostMembraneOxygen));
        signs[PostMembranePco2MmHg] = Pco2(p, breath.Mean(Signal.PostMembraneCarbonDioxide), breath.Mean(Signal.PostMembraneOxygen));
        return signs;
    }

    /// <summary>
    /// Diameter of a ventricle by its volume: the inverse of V = 7 D³/(2.4 + D), D in cm (Teichholz 1976, from memory), by halving.
    /// </summary>
    private static double DiameterMm(double volumeMl)
    {
        (double low, double high) = (0, 20);
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = 7 * middle * middle * middle / (2.4 + middle) < volumeMl ? (middle, high) : (low, middle);
        }

        return 10 * low;
    }

    private static double Tissue(double arterial, double venous) => (ArterialShareOfTissue * arterial) + ((1 - ArterialShareOfTissue) * venous);

    private static double Po2(CirculationParameters p, double contentMlPerDl) =>
        OxygenContent.Po2At(contentMlPerDl, p[CirculationParameter.HaemoglobinGPerDl], BloodConditions.Standard, BloodConstants.Default)
        / p[CirculationParameter.VirtualPo2Factor];

    /// <summary>Carbon dioxide tension at a content: the inverse of section 7 of docs/models/circulation.md.</summary>
    private static double Pco2(CirculationParameters p, double contentMlPerDl, double oxygenMlPerDl)
    {
        double desaturated = Math.Max(0, 1 - (oxygenMlPerDl / (BloodConstants.Default.HuefnerMlPerG * p[CirculationParameter.HaemoglobinGPerDl])));
        double scale = 100 * p[CirculationParameter.CarbonDioxideScale] * (1 + (p[CirculationParameter.HaldaneFactor] * desaturated));
        return Math.Pow(contentMlPerDl / scale, 1 / p[CirculationParameter.CarbonDioxideExponent]);
    }
}
