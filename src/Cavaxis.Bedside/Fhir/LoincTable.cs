using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Fhir;

/// <summary>
/// LOINC codes where they are known. A quantity without one goes out with its words and unit alone: a wrong code is worse than none. Codes of vital signs were found in the value sets
/// and profiles of FHIR R4's package (a test looks them up there); the others were read with the same meaning in public programs that quote LOINC, no LOINC table being within reach.
/// </summary>
public static class LoincTable
{
    private const string Profiles = "http://hl7.org/fhir/StructureDefinition/";

    /// <summary>All.</summary>
    public static IReadOnlyList<LoincCode> All { get; } =
    [
        new(ObservedQuantity.HeartRatePerMin, "8867-4", "Heart rate", Certainty.Seen, true, Profiles + "heartrate"),
        new(ObservedQuantity.RespiratoryRatePerMin, "9279-1", "Respiratory rate", Certainty.Seen, true, Profiles + "resprate"),
        new(ObservedQuantity.TemperatureCelsius, "8310-5", "Body temperature", Certainty.Seen, true, Profiles + "bodytemp"),
        new(ObservedQuantity.RightArmSaturationPercent, "2708-6", "Oxygen saturation in Arterial blood", Certainty.Seen, true, Profiles + "oxygensat"),
        new(ObservedQuantity.MeanArterialPressureMmHg, "8478-0", "Mean blood pressure", Certainty.Seen),
        new(ObservedQuantity.SystolicPressureMmHg, "8480-6", "Systolic blood pressure", Certainty.Seen),
        new(ObservedQuantity.DiastolicPressureMmHg, "8462-4", "Diastolic blood pressure", Certainty.Seen),
        new(ObservedQuantity.RightArmPo2MmHg, "2703-7", "Oxygen [Partial pressure] in Arterial blood", Certainty.SeenSecondHand),
        new(ObservedQuantity.RightArmPco2MmHg, "2019-8", "Carbon dioxide [Partial pressure] in Arterial blood", Certainty.SeenSecondHand),
        new(ObservedQuantity.RightArmPh, "2744-1", "pH of Arterial blood", Certainty.SeenSecondHand),
        new(ObservedQuantity.HaemoglobinGPerDl, "718-7", "Hemoglobin [Mass/volume] in Blood", Certainty.SeenSecondHand),
        new(ObservedQuantity.PlateletsGPerL, "777-3", "Platelets [#/volume] in Blood by Automated count", Certainty.SeenSecondHand),
        new(ObservedQuantity.FibrinogenGPerL, "3255-7", "Fibrinogen [Mass/volume] in Platelet poor plasma by Coagulation assay", Certainty.SeenSecondHand),
        new(ObservedQuantity.PartialThromboplastinTimeS, "14979-9", "aPTT in Platelet poor plasma by Coagulation assay", Certainty.SeenSecondHand),
        new(ObservedQuantity.LactateMmolPerL, "32693-4", "Lactate [Moles/volume] in Blood", Certainty.SeenSecondHand),
        new(ObservedQuantity.LactateDehydrogenaseUPerL, "2532-0", "Lactate dehydrogenase [Enzymatic activity/volume] in Serum or Plasma", Certainty.SeenSecondHand),
        new(ObservedQuantity.EjectionFractionPercent, "10230-1", "Left ventricular Ejection fraction", Certainty.SeenSecondHand),
    ];

    private static readonly Dictionary<ObservedQuantity, LoincCode> ByQuantity = All.ToDictionary(static c => c.Quantity);

    /// <summary>The code of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>The code; null where none is known.</returns>
    public static LoincCode? Find(ObservedQuantity quantity) => ByQuantity.GetValueOrDefault(quantity);
}
