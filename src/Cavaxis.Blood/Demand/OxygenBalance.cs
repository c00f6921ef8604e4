using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Demand;

/// <summary>Where oxygen delivery and consumption settle.</summary>
public readonly record struct OxygenBalance
{
    /// <summary>The balance that follows from an arterial content by Fick's principle.</summary>
    /// <param name="arterialContentMlPerDl">Arterial oxygen content, mL/dL; may be negative as a sign of unmet demand.</param>
    /// <param name="systemicFlowLPerMin">Systemic flow, above 0 to 50 L/min.</param>
    /// <param name="consumptionMlPerMin">Oxygen consumption, above 0 to 2000 mL/min.</param>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public OxygenBalance(double arterialContentMlPerDl, double systemicFlowLPerMin, double consumptionMlPerMin)
    {
        ArterialContentMlPerDl = Require.InRange(
            arterialContentMlPerDl, -1e6, BloodInput.HighestContent, nameof(arterialContentMlPerDl),
            "Give the content in mL of gas per dL of blood.");
        SystemicFlowLPerMin = VenoVenousSupport.CardiacOutputInRange(systemicFlowLPerMin, nameof(systemicFlowLPerMin));
        ConsumptionMlPerMin = VenoVenousSupport.ConsumptionInRange(consumptionMlPerMin);
        VenousContentMlPerDl = arterialContentMlPerDl - (consumptionMlPerMin / (10 * systemicFlowLPerMin));
    }

    /// <summary>Arterial oxygen content, mL/dL.</summary>
    public double ArterialContentMlPerDl { get; }

    /// <summary>
    /// Mixed venous oxygen content before any extracorporeal blood joins it, mL/dL; negative when the demand is not met.
    /// </summary>
    public double VenousContentMlPerDl { get; }

    /// <summary>Systemic flow, L/min.</summary>
    public double SystemicFlowLPerMin { get; }

    /// <summary>Oxygen consumption asked for, mL/min.</summary>
    public double ConsumptionMlPerMin { get; }

    /// <summary>Oxygen delivery, mL/min: ten times flow times arterial content.</summary>
    public double DeliveryMlPerMin => 10 * SystemicFlowLPerMin * ArterialContentMlPerDl;

    /// <summary>Delivery over consumption.</summary>
    public double DeliveryOverConsumption => DeliveryMlPerMin / ConsumptionMlPerMin;

    /// <summary>
    /// False when the consumption asked for would empty venous blood below nothing: no steady state exists and the contents
    /// only tell how far off it is.
    /// </summary>
    public bool DemandIsMet => VenousContentMlPerDl >= 0;
}
