using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Circuit;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Circuit;

/// <summary>
/// Pressures round the circuit at one flow: vein → drainage cannula → tubing → pump → membrane lung → tubing → return cannula →
/// vein or artery. Heights are not counted: pump and patient are taken at one level (docs/models/planning.md).
/// </summary>
internal sealed class CircuitModel
{
    private const double NarrowTubingBelowLPerMin = 1.5;
    private const double TubingLengthM = 2;
    private const double HighestHeadMmHg = 1000;
    private readonly Fluid blood;
    private readonly PatientPicture patient;
    private readonly double lowestInletMmHg;
    private readonly double highestReturnMmHg;

    /// <summary>The circuit of one plan flow.</summary>
    /// <param name="flowLPerMin">Flow the parts are chosen for.</param>
    /// <param name="catalogue">Pumps and lungs to choose from.</param>
    /// <param name="blood">This patient's blood.</param>
    /// <param name="patient">Pressures of the patient.</param>
    /// <param name="rules">Limits.</param>
    public CircuitModel(double flowLPerMin, DeviceCatalogue catalogue, Fluid blood, PatientPicture patient, RuleBook rules)
    {
        this.blood = blood;
        this.patient = patient;
        lowestInletMmHg = Math.Max(rules[LimitName.InletPressureMmHg], rules[LimitName.InletPressureAbsoluteMmHg]);
        highestReturnMmHg = Math.Min(rules[LimitName.ReturnPressureMmHg], rules[LimitName.ReturnPressureAbsoluteMmHg]);
        double bore = flowLPerMin < NarrowTubingBelowLPerMin ? Tubing.QuarterInchMm : Tubing.ThreeEighthsInchMm;
        Tubing = new Tubing(bore, TubingLengthM);
        Lung = catalogue.MembraneLungs
            .OrderBy(lung => lung.RatedFlowLPerMin >= flowLPerMin ? 0 : 1)
            .ThenBy(lung => lung.RatedFlowLPerMin >= flowLPerMin ? lung.RatedFlowLPerMin : -lung.RatedFlowLPerMin)
            .ThenBy(lung => lung.Id, StringComparer.Ordinal)
            .First();
        Pump = catalogue.Pumps
            .OrderBy(pump => pump.HighestFlowLPerMin >= flowLPerMin ? 0 : 1)
            .ThenBy(pump => pump.HighestFlowLPerMin >= flowLPerMin ? pump.HighestFlowLPerMin : -pump.HighestFlowLPerMin)
            .ThenBy(pump => pump.Id, StringComparer.Ordinal)
            .First();
    }

    /// <summary>Membrane lung: the smallest whose rated flow suffices.</summary>
    public MembraneLung Lung { get; }

    /// <summary>Pump: the smallest that is meant for the flow.</summary>
    public CentrifugalPump Pump { get; }

    /// <summary>Tubing on either side of the pump.</summary>
    public Tubing Tubing { get; }

    /// <summary>Pressure at the pump inlet.</summary>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <param name="drainageDropMmHg">Drop of the drainage cannula at that flow.</param>
    /// <returns>mmHg; negative for suction.</returns>
    public double InletMmHg(double flowLPerMin, double drainageDropMmHg) =>
        patient.CentralVenousPressureMmHg.Value - drainageDropMmHg - TubingDropMmHg(flowLPerMin);

    /// <summary>Pressure after the membrane lung when blood returns to an artery, a vein or both.</summary>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <param name="arterialDropMmHg">Drop of the arterial return cannula at its share of the flow, or null.</param>
    /// <param name="venousDropMmHg">Drop of the venous return at its share of the flow, or null.</param>
    /// <returns>mmHg. With both, the higher branch rules and a clamp takes up the rest on the other.</returns>
    public double ReturnMmHg(double flowLPerMin, double? arterialDropMmHg, double? venousDropMmHg)
    {
        double arterial = arterialDropMmHg is double a ? patient.MeanArterialPressureMmHg.Value + a : double.NegativeInfinity;
        double venous = venousDropMmHg is double v ? patient.CentralVenousPressureMmHg.Value + v : double.NegativeInfinity;
        return Math.Max(arterial, venous) + TubingDropMmHg(flowLPerMin);
    }

    /// <summary>Pump speed for the head between inlet and lung, or null when the pump cannot.</summary>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <param name="inletMmHg">Inlet pressure.</param>
    /// <param name="returnMmHg">Pressure after the lung.</param>
    /// <returns>Revolutions per minute, or null.</returns>
    public double? SpeedPerMin(double flowLPerMin, double inletMmHg, double returnMmHg)
    {
        double head = returnMmHg + (Lung.DropPa(flowLPerMin, blood) / UnitFactors.PascalsPerMmHg) - inletMmHg;
        if (head is < 0 or > HighestHeadMmHg)
        {
            return null;
        }

        double speed = Pump.SpeedFor(flowLPerMin, head);
        return Pump.CanRunAt(speed, flowLPerMin) ? speed : null;
    }

    /// <summary>True when both pressures keep the usual limits, and the absolute ones where a rule book put the usual ones beyond them.</summary>
    /// <param name="inletMmHg">Inlet pressure.</param>
    /// <param name="returnMmHg">Pressure after the lung.</param>
    /// <returns>Whether they do.</returns>
    public bool WithinLimits(double inletMmHg, double returnMmHg) =>
        inletMmHg >= lowestInletMmHg && returnMmHg <= highestReturnMmHg;

    /// <summary>Drop of the tubing on one side of the pump.</summary>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <returns>mmHg.</returns>
    public double TubingDropMmHg(double flowLPerMin) => Tubing.DropPa(flowLPerMin, blood) / UnitFactors.PascalsPerMmHg;
}
