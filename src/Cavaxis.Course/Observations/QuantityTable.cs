using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Observations;

/// <summary>
/// Everything that can be observed: words, unit, accepted range and the usual spread of one reading. The ranges are wide: they keep out slips of the
/// hand, not sick patients. The spreads are those of the case file where it has the quantity; the others are common practice, no source.
/// </summary>
public static class QuantityTable
{
    /// <summary>All, in the order of <see cref="ObservedQuantity"/>.</summary>
    public static IReadOnlyList<QuantityDefinition> All { get; } =
    [
        new(ObservedQuantity.MeanArterialPressureMmHg, "mean arterial pressure", "mmHg", "mm[Hg]", 5, 250, 3),
        new(ObservedQuantity.SystolicPressureMmHg, "systolic arterial pressure", "mmHg", "mm[Hg]", 5, 300, 4),
        new(ObservedQuantity.DiastolicPressureMmHg, "diastolic arterial pressure", "mmHg", "mm[Hg]", 0, 200, 3),
        new(ObservedQuantity.CentralVenousPressureMmHg, "central venous pressure", "mmHg", "mm[Hg]", -10, 50, 1.5),
        new(ObservedQuantity.PulmonaryArteryMeanMmHg, "mean pulmonary artery pressure", "mmHg", "mm[Hg]", 0, 120, 2),
        new(ObservedQuantity.PulmonaryArterySystolicMmHg, "systolic pulmonary artery pressure", "mmHg", "mm[Hg]", 0, 160, 3),
        new(ObservedQuantity.PulmonaryArteryDiastolicMmHg, "diastolic pulmonary artery pressure", "mmHg", "mm[Hg]", 0, 100, 2),
        new(ObservedQuantity.WedgePressureMmHg, "wedge pressure", "mmHg", "mm[Hg]", 0, 60, 2),
        new(ObservedQuantity.HeartRatePerMin, "heart rate", "/min", "/min", 0, 300, 2),
        new(ObservedQuantity.OutflowVtiCm, "velocity-time integral of the outflow", "cm", "cm", 0, 50, 1),
        new(ObservedQuantity.EjectionFractionPercent, "ejection fraction", "%", "%", 0, 90, 6),
        new(ObservedQuantity.LateralMitralVelocityCmPerS, "lateral mitral annulus systolic velocity", "cm/s", "cm/s", 0, 30, 0.8),
        new(ObservedQuantity.CardiacOutputLPerMin, "output of the heart", "L/min", "L/min", 0, 20, 0.6),
        new(ObservedQuantity.AorticValveOpenPercent, "share of the beat with the aortic valve open", "%", "%", 0, 60, 3),
        new(ObservedQuantity.LeftVentricularDiameterMm, "end-diastolic diameter of the left ventricle", "mm", "mm", 5, 120, 3),
        new(ObservedQuantity.AbdominalPressureMmHg, "pressure in the abdomen", "mmHg", "mm[Hg]", -5, 60, 2),
        new(ObservedQuantity.RightArmSaturationPercent, "saturation of the right arm", "%", "%", 10, 100, 2),
        new(ObservedQuantity.RightArmPo2MmHg, "oxygen tension of the right arm", "mmHg", "mm[Hg]", 10, 700, 5),
        new(ObservedQuantity.RightArmPco2MmHg, "carbon dioxide tension of the right arm", "mmHg", "mm[Hg]", 8, 200, 2),
        new(ObservedQuantity.RightArmPh, "pH of the right arm", "1", "[pH]", 6.5, 8, 0.02),
        new(ObservedQuantity.LegSaturationPercent, "saturation of a leg", "%", "%", 10, 100, 2),
        new(ObservedQuantity.CannulatedLimbSaturationPercent, "tissue saturation of the leg with the cannula", "%", "%", 10, 95, 4),
        new(ObservedQuantity.OtherLimbSaturationPercent, "tissue saturation of the other leg", "%", "%", 10, 95, 4),
        new(ObservedQuantity.CerebralSaturationPercent, "tissue saturation of the forehead", "%", "%", 10, 95, 4),
        new(ObservedQuantity.PulmonaryArterySaturationPercent, "saturation of the pulmonary artery", "%", "%", 5, 100, 2),
        new(ObservedQuantity.CentralVenousSaturationPercent, "saturation of the upper cava", "%", "%", 5, 100, 3),
        new(ObservedQuantity.HaemoglobinGPerDl, "haemoglobin", "g/dL", "g/dL", 2, 25, 0.3),
        new(ObservedQuantity.TemperatureCelsius, "temperature", "°C", "Cel", 20, 43, 0.2),
        new(ObservedQuantity.LactateMmolPerL, "lactate", "mmol/L", "mmol/L", 0, 40, 0.3),
        new(ObservedQuantity.UrineMlPerH, "urine", "mL/h", "mL/h", 0, 1500, 10),
        new(ObservedQuantity.PumpFlowLPerMin, "pump flow", "L/min", "L/min", 0, 10, 0.1),
        new(ObservedQuantity.PumpSpeedPerMin, "pump speed", "/min", "/min", 0, 20000, 20),
        new(ObservedQuantity.SweepLPerMin, "sweep gas", "L/min", "L/min", 0, 20, 0.1),
        new(ObservedQuantity.SweepOxygenFraction, "oxygen fraction of the sweep gas", "1", "1", 0.21, 1, 0.01),
        new(ObservedQuantity.InletPressureMmHg, "pressure before the pump", "mmHg", "mm[Hg]", -400, 100, 8),
        new(ObservedQuantity.PreMembranePressureMmHg, "pressure before the membrane lung", "mmHg", "mm[Hg]", -50, 800, 8),
        new(ObservedQuantity.PostMembranePressureMmHg, "pressure after the membrane lung", "mmHg", "mm[Hg]", -50, 800, 8),
        new(ObservedQuantity.PreMembraneSaturationPercent, "saturation before the membrane lung", "%", "%", 5, 100, 2),
        new(ObservedQuantity.PostMembraneSaturationPercent, "saturation after the membrane lung", "%", "%", 5, 100, 1),
        new(ObservedQuantity.PreMembranePo2MmHg, "oxygen tension before the membrane lung", "mmHg", "mm[Hg]", 5, 700, 3),
        new(ObservedQuantity.PostMembranePo2MmHg, "oxygen tension after the membrane lung", "mmHg", "mm[Hg]", 10, 750, 15),
        new(ObservedQuantity.PreMembranePco2MmHg, "carbon dioxide tension before the membrane lung", "mmHg", "mm[Hg]", 8, 200, 2),
        new(ObservedQuantity.PostMembranePco2MmHg, "carbon dioxide tension after the membrane lung", "mmHg", "mm[Hg]", 3, 200, 2),
        new(ObservedQuantity.RecirculationPercent, "recirculation by dilution", "%", "%", 0, 100, 5),
        new(ObservedQuantity.LineChatterPerMin, "shakes of the drainage line", "/min", "/min", 0, 200, 3),
        new(ObservedQuantity.InspiredOxygenFraction, "inspired oxygen fraction", "1", "1", 0.21, 1, 0.01),
        new(ObservedQuantity.TidalVolumeMl, "tidal volume", "mL", "mL", 0, 1500, 10),
        new(ObservedQuantity.RespiratoryRatePerMin, "breaths", "/min", "/min", 0, 80, 1),
        new(ObservedQuantity.PeepCmH2O, "end-expiratory pressure", "cmH2O", "cm[H2O]", 0, 40, 0.5),
        new(ObservedQuantity.PlateauPressureCmH2O, "plateau pressure", "cmH2O", "cm[H2O]", 0, 80, 1),
        new(ObservedQuantity.ActivatedClottingTimeS, "activated clotting time", "s", "s", 50, 1500, 10),
        new(ObservedQuantity.PartialThromboplastinTimeS, "activated partial thromboplastin time", "s", "s", 15, 250, 3),
        new(ObservedQuantity.AntiXaIuPerMl, "anti-Xa activity", "IU/mL", "[IU]/mL", 0, 3, 0.05),
        new(ObservedQuantity.PlateletsGPerL, "platelets", "10⁹/L", "10*9/L", 0, 1500, 8),
        new(ObservedQuantity.FibrinogenGPerL, "fibrinogen", "g/L", "g/L", 0, 15, 0.2),
        new(ObservedQuantity.DDimerMgPerL, "D-dimer", "mg/L", "mg/L", 0, 200, 0.3),
        new(ObservedQuantity.FreeHaemoglobinMgPerL, "free haemoglobin of plasma", "mg/L", "mg/L", 0, 10000, 20),
        new(ObservedQuantity.LactateDehydrogenaseUPerL, "lactate dehydrogenase", "U/L", "U/L", 0, 20000, 20),
        new(ObservedQuantity.HeparinUnitsPerH, "heparin", "U/h", "[IU]/h", 0, 6000, 10),
    ];

    private static readonly Dictionary<string, QuantityDefinition> ByKey = All.ToDictionary(static d => d.Key, StringComparer.Ordinal);

    /// <summary>The definition of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Its definition.</returns>
    public static QuantityDefinition Of(ObservedQuantity quantity) => All[(int)quantity];

    /// <summary>The quantity of a key as files write it.</summary>
    /// <param name="key">Such as <c>pumpFlowLPerMin</c>.</param>
    /// <returns>Its definition; null when there is none of that key.</returns>
    public static QuantityDefinition? Find(string key) => ByKey.GetValueOrDefault(key);

    /// <summary>Checks a value against the accepted range of its quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <param name="value">Value in its unit.</param>
    /// <param name="path">Where the value stands in the input.</param>
    /// <returns>What is wrong; null for nothing.</returns>
    public static InputFault? Check(ObservedQuantity quantity, double value, string path)
    {
        QuantityDefinition of = Of(quantity);
        return double.IsFinite(value) && value >= of.Low && value <= of.High
            ? null
            : new InputFault(FaultCode.OutOfRange, path, value.ToString("R", CultureInfo.InvariantCulture), FormattableString.Invariant($"{of.Low} to {of.High} {of.Unit}"), FormattableString.Invariant($"Check the {of.Words} and its unit."));
    }
}
