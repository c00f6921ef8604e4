using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>The numbers that can be changed on the page, in their order. Ranges come from the table of the model.</summary>
internal static class ControlTable
{
    /// <summary>What a patient offers to be changed.</summary>
    /// <param name="patient">The patient shown.</param>
    /// <param name="referenceSpeedPerMin">Speed at which the speed ratio is one; null where not known.</param>
    /// <returns>The controls.</returns>
    public static IReadOnlyList<Control> For(CirculationParameters patient, double? referenceSpeedPerMin)
    {
        bool circuit = patient[CircuitOn] > 0;
        bool arterial = circuit && patient[ArterialShareOfReturn] > 0;
        return [.. All(patient, referenceSpeedPerMin).Where(c => c.Parameter switch
        {
            TargetFlowLPerMin or PumpSpeedRatio or SweepLPerMin or SweepOxygenFraction => circuit,
            BalloonVolumeMl or VentFlowLPerMin => arterial,
            _ => true,
        })];
    }

    private static IEnumerable<Control> All(CirculationParameters patient, double? speed)
    {
        double size = patient.MassKg / ParameterTable.ReferenceMassKg;
        double small = size < 0.4 ? 0.1 : 1;
        yield return patient[FlowControlPerS] > 0
            ? new Control("flow", TargetFlowLPerMin, "Pump flow", "L/min", 1, 0.25 * small, ChangeKind.Add, small < 1 ? 3 : 2)
            : new Control("speed", PumpSpeedRatio, "Pump speed", speed is null ? "% of its curve" : "/min", speed ?? 100, speed is null ? 5 : 100, ChangeKind.Set, 0);
        yield return new Control("volume", BloodVolumeMl, "Blood volume", "mL", 1, 250 * small, ChangeKind.Add, 0);
        yield return new Control("contractility", LeftVentricleElastanceMmHgPerMl, "Contractility, left ventricle", "% of now", 100, 0.1, ChangeKind.Multiply, 0);
        yield return new Control("rightContractility", RightVentricleElastanceMmHgPerMl, "Contractility, right ventricle", "% of now", 100, 0.1, ChangeKind.Multiply, 0);
        yield return new Control("resistance", SystemicResistanceMmHgSPerMl, "Resistance of the body's vessels", "% of now", 100, 0.1, ChangeKind.Multiply, 0);
        yield return new Control("pulmonaryResistance", PulmonaryResistanceMmHgSPerMl, "Resistance of the lung's vessels", "% of now", 100, 0.1, ChangeKind.Multiply, 0);
        yield return new Control("heartRate", HeartRatePerMin, "Heart rate", "/min", 1, 5, ChangeKind.Set, 0);
        yield return new Control("balloon", BalloonVolumeMl, "Balloon pump, volume", "mL", 1, 10, ChangeKind.Set, 0);
        yield return new Control("vent", VentFlowLPerMin, "Vent of the left ventricle", "L/min", 1, 0.25, ChangeKind.Set, 2);
        yield return new Control("sweep", SweepLPerMin, "Sweep gas", "L/min", 1, small < 1 ? 0.1 : 0.5, ChangeKind.Set, 1);
        yield return new Control("sweepOxygen", SweepOxygenFraction, "Oxygen in the sweep gas", "%", 100, 10, ChangeKind.Set, 0);
        yield return new Control("fio2", InspiredOxygenFraction, "Inspired oxygen", "%", 100, 10, ChangeKind.Set, 0);
        yield return new Control("peep", PeepCmH2O, "PEEP", "cmH2O", 1, 2, ChangeKind.Set, 0);
        yield return new Control("abdomen", AbdominalPressureMmHg, "Pressure in the abdomen", "mmHg", 1, 2, ChangeKind.Add, 0);
        yield return new Control("haemoglobin", HaemoglobinGPerDl, "Haemoglobin", "g/dL", 1, 0.5, ChangeKind.Add, 1);
    }
}
