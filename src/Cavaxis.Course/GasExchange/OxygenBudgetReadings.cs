using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>What has to be read to hold delivery against consumption.</summary>
public sealed record OxygenBudgetReadings
{
    /// <summary>Readings.</summary>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 25 g/dL.</param>
    /// <param name="systemicFlowLPerMin">Flow to the body, above 0 to 20 L/min: the output of the heart, and on veno-arterial support the pump flow on top.</param>
    /// <param name="arterial">Arterial sample.</param>
    /// <param name="membraneTransferMlPerMin">Oxygen given by the membrane lung, mL/min.</param>
    /// <exception cref="InputFaultException">A value is out of range.</exception>
    public OxygenBudgetReadings(Estimate haemoglobinGPerDl, Estimate systemicFlowLPerMin, OxygenSample arterial, Estimate membraneTransferMlPerMin)
    {
        ArgumentNullException.ThrowIfNull(haemoglobinGPerDl);
        ArgumentNullException.ThrowIfNull(systemicFlowLPerMin);
        ArgumentNullException.ThrowIfNull(arterial);
        ArgumentNullException.ThrowIfNull(membraneTransferMlPerMin);
        Require.InRange(haemoglobinGPerDl.Value, 3, 25, nameof(haemoglobinGPerDl), "Give haemoglobin in g/dL.");
        Require.InRange(systemicFlowLPerMin.Value, 0.1, 20, nameof(systemicFlowLPerMin), "Give the flow in L/min.");
        (HaemoglobinGPerDl, SystemicFlowLPerMin, Arterial, MembraneTransferMlPerMin) = (haemoglobinGPerDl, systemicFlowLPerMin, arterial, membraneTransferMlPerMin);
    }

    /// <summary>Haemoglobin, g/dL.</summary>
    public Estimate HaemoglobinGPerDl { get; }

    /// <summary>Flow to the body, L/min.</summary>
    public Estimate SystemicFlowLPerMin { get; }

    /// <summary>Arterial sample.</summary>
    public OxygenSample Arterial { get; }

    /// <summary>Oxygen given by the membrane lung, mL/min.</summary>
    public Estimate MembraneTransferMlPerMin { get; }

    /// <summary>Oxygen taken up by the patient's own lung, mL/min; null when it is not known.</summary>
    public Estimate? NativeTransferMlPerMin { get; init; }
}
