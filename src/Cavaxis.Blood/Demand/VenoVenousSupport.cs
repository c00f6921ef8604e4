using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Demand;

/// <summary>
/// Steady oxygen balance on veno-venous support in closed form. Effective flow is pump flow less recirculation; it takes
/// true mixed venous blood and returns it at the post-membrane content, and the rest of the cardiac output passes by.
/// </summary>
/// <remarks>Derivation in <c>docs/models/blood.md</c>. All contents are total: bound and dissolved.</remarks>
public static class VenoVenousSupport
{
    // A target that the whole cardiac output just reaches must not be lost to the last bits of the arithmetic.
    private const double Rounding = 1 + 1e-9;

    /// <summary>Balance with a native lung that takes up a known amount of oxygen (zero without native lung).</summary>
    /// <param name="effectiveFlowLPerMin">Effective flow, above 0, at most the cardiac output.</param>
    /// <param name="cardiacOutputLPerMin">Cardiac output, above 0 to 50 L/min.</param>
    /// <param name="postMembraneContentMlPerDl">Oxygen content after the membrane lung, mL/dL.</param>
    /// <param name="consumptionMlPerMin">Oxygen consumption, above 0 to 2000 mL/min.</param>
    /// <param name="nativeUptakeMlPerMin">Oxygen taken up by the native lung, 0 to the consumption, mL/min.</param>
    /// <returns>The balance: Ca = Cpost − (VO2 − L)/(10 Qe) + VO2/(10 Q).</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static OxygenBalance Balance(
        double effectiveFlowLPerMin,
        double cardiacOutputLPerMin,
        double postMembraneContentMlPerDl,
        double consumptionMlPerMin,
        double nativeUptakeMlPerMin = 0)
    {
        double output = CardiacOutputInRange(cardiacOutputLPerMin, nameof(cardiacOutputLPerMin));
        double effective = Require.InRange(
            effectiveFlowLPerMin, 1e-3, output, nameof(effectiveFlowLPerMin),
            "Effective flow cannot exceed the cardiac output; what exceeds it recirculates.");
        double consumption = ConsumptionInRange(consumptionMlPerMin);
        double uptake = UptakeInRange(nativeUptakeMlPerMin, consumption);
        double post = BloodInput.Content(postMembraneContentMlPerDl, nameof(postMembraneContentMlPerDl));
        double arterial = post - ((consumption - uptake) / (10 * effective)) + (consumption / (10 * output));
        return new OxygenBalance(arterial, output, consumption);
    }

    /// <summary>Balance with a native lung described by its shunt.</summary>
    /// <param name="effectiveFlowLPerMin">Effective flow, 0 to the cardiac output, L/min.</param>
    /// <param name="cardiacOutputLPerMin">Cardiac output, above 0 to 50 L/min.</param>
    /// <param name="postMembraneContentMlPerDl">Oxygen content after the membrane lung, mL/dL.</param>
    /// <param name="consumptionMlPerMin">Oxygen consumption, above 0 to 2000 mL/min.</param>
    /// <param name="shuntFraction">Share of the cardiac output that passes the native lung without gas exchange, 0 to 1.</param>
    /// <param name="endCapillaryContentMlPerDl">Content of blood leaving ventilated native lung, mL/dL.</param>
    /// <returns>The balance.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range, or nothing supplies oxygen.</exception>
    public static OxygenBalance BalanceWithShunt(
        double effectiveFlowLPerMin,
        double cardiacOutputLPerMin,
        double postMembraneContentMlPerDl,
        double consumptionMlPerMin,
        double shuntFraction,
        double endCapillaryContentMlPerDl)
    {
        double output = CardiacOutputInRange(cardiacOutputLPerMin, nameof(cardiacOutputLPerMin));
        double share = Require.InRange(
            effectiveFlowLPerMin, 0, output, nameof(effectiveFlowLPerMin),
            "Effective flow cannot exceed the cardiac output; what exceeds it recirculates.") / output;
        double shunt = ShuntInRange(shuntFraction);
        double difference = ConsumptionInRange(consumptionMlPerMin) / (10 * output);
        double post = BloodInput.Content(postMembraneContentMlPerDl, nameof(postMembraneContentMlPerDl));
        double capillary = BloodInput.Content(endCapillaryContentMlPerDl, nameof(endCapillaryContentMlPerDl));
        double passes = shunt * (1 - share);
        if (passes > 0.999)
        {
            throw new InputFaultException(Require.OutOfRange(
                passes, 0, 0.999, nameof(shuntFraction), "Neither lung oxygenates: raise the flow or lower the shunt."));
        }

        double arterial = (((1 - shunt) * capillary) + (shunt * share * post) - (passes * difference)) / (1 - passes);
        return new OxygenBalance(arterial, output, consumptionMlPerMin);
    }

    /// <summary>Effective flow that reaches an arterial content with a native lung of known uptake.</summary>
    /// <param name="arterialContentMlPerDl">Arterial content to reach, mL/dL.</param>
    /// <param name="cardiacOutputLPerMin">Cardiac output, above 0 to 50 L/min.</param>
    /// <param name="postMembraneContentMlPerDl">Oxygen content after the membrane lung, mL/dL.</param>
    /// <param name="consumptionMlPerMin">Oxygen consumption, above 0 to 2000 mL/min.</param>
    /// <param name="nativeUptakeMlPerMin">Oxygen taken up by the native lung, 0 to the consumption, mL/min.</param>
    /// <returns>Effective flow in L/min, or null when even the whole cardiac output does not reach it.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double? EffectiveFlowLPerMin(
        double arterialContentMlPerDl,
        double cardiacOutputLPerMin,
        double postMembraneContentMlPerDl,
        double consumptionMlPerMin,
        double nativeUptakeMlPerMin = 0)
    {
        double output = CardiacOutputInRange(cardiacOutputLPerMin, nameof(cardiacOutputLPerMin));
        double target = BloodInput.Content(arterialContentMlPerDl, nameof(arterialContentMlPerDl));
        double post = BloodInput.Content(postMembraneContentMlPerDl, nameof(postMembraneContentMlPerDl));
        double consumption = ConsumptionInRange(consumptionMlPerMin);
        double uptake = UptakeInRange(nativeUptakeMlPerMin, consumption);
        double margin = post - target + (consumption / (10 * output));
        double needed = (consumption - uptake) / (10 * margin);
        return margin > 0 && needed <= output * Rounding ? Math.Min(needed, output) : null;
    }

    /// <summary>Effective flow that reaches an arterial content with a native lung described by its shunt.</summary>
    /// <param name="arterialContentMlPerDl">Arterial content to reach, mL/dL.</param>
    /// <param name="cardiacOutputLPerMin">Cardiac output, above 0 to 50 L/min.</param>
    /// <param name="postMembraneContentMlPerDl">Oxygen content after the membrane lung, mL/dL.</param>
    /// <param name="consumptionMlPerMin">Oxygen consumption, above 0 to 2000 mL/min.</param>
    /// <param name="shuntFraction">Share of the cardiac output that passes the native lung without gas exchange, 0 to 1.</param>
    /// <param name="endCapillaryContentMlPerDl">Content of blood leaving ventilated native lung, mL/dL.</param>
    /// <returns>
    /// Effective flow in L/min, zero when the native lung suffices, or null when even the whole cardiac output does not reach
    /// it.
    /// </returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double? EffectiveFlowWithShuntLPerMin(
        double arterialContentMlPerDl,
        double cardiacOutputLPerMin,
        double postMembraneContentMlPerDl,
        double consumptionMlPerMin,
        double shuntFraction,
        double endCapillaryContentMlPerDl)
    {
        double output = CardiacOutputInRange(cardiacOutputLPerMin, nameof(cardiacOutputLPerMin));
        double target = BloodInput.Content(arterialContentMlPerDl, nameof(arterialContentMlPerDl));
        double post = BloodInput.Content(postMembraneContentMlPerDl, nameof(postMembraneContentMlPerDl));
        double capillary = BloodInput.Content(endCapillaryContentMlPerDl, nameof(endCapillaryContentMlPerDl));
        double shunt = ShuntInRange(shuntFraction);
        double difference = ConsumptionInRange(consumptionMlPerMin) / (10 * output);
        double lacking = ((1 - shunt) * (target - capillary)) + (shunt * difference);
        if (lacking <= 0)
        {
            return 0;
        }

        double gained = shunt * (post + difference - target);
        return lacking <= gained * Rounding ? output * Math.Min(lacking / gained, 1) : null;
    }

    internal static double CardiacOutputInRange(double lPerMin, string field) =>
        Require.InRange(lPerMin, 1e-3, BloodInput.HighestFlow, field, "Give the flow in L/min.");

    internal static double ConsumptionInRange(double mlPerMin) => Require.InRange(
        mlPerMin, 1e-3, 2000, "consumptionMlPerMin", "Give the oxygen consumption in mL/min.");

    private static double UptakeInRange(double mlPerMin, double consumption) => Require.InRange(
        mlPerMin, 0, consumption, "nativeUptakeMlPerMin", "In a steady state the lung takes up no more than is consumed.");

    private static double ShuntInRange(double fraction) =>
        Require.InRange(fraction, 0, 1, "shuntFraction", "Give the shunt as a fraction, 0.4 for 40 %.");
}
