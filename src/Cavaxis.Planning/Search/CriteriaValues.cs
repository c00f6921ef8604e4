using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Search;

/// <summary>The value of every criterion for a combination. Each is explained in docs/models/planning.md.</summary>
internal sealed class CriteriaValues(PlanningContext context, ConfigurationTable configuration, double neededLPerMin)
{
    /// <summary>Flow that a distal perfusion cannula is looked at with in an adult, L/min (measured 140-480 mL/min; research in docs/models/planning.md).</summary>
    public const double DistalPerfusionFlowLPerMin = 0.3;

    /// <summary>All values, in the order of the rule book's criteria.</summary>
    /// <param name="options">Devices and sides.</param>
    /// <param name="flowLPerMin">Flow carried.</param>
    /// <param name="inletMmHg">Inlet pressure.</param>
    /// <param name="returnMmHg">Pressure after the lung.</param>
    /// <param name="fit">Probability that all ports can be brought into their zones.</param>
    /// <returns>One value for each criterion.</returns>
    public double[] Of(IReadOnlyList<SlotOption> options, double flowLPerMin, double inletMmHg, double returnMmHg, double fit)
    {
        double target = context.Flows.SystemicTargetLPerMin;
        (double saturation, double delivery) = context.Gas.Middle(configuration.Kind, flowLPerMin, target);
        double arterial = ArterialFlow(flowLPerMin);
        IReadOnlyList<CriterionRule> rules = context.Rules.Criteria;
        double[] values = new double[rules.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = rules[i].Name switch
            {
                CriterionName.Fit => fit,
                CriterionName.FlowReached => Math.Min(1, flowLPerMin / neededLPerMin),
                CriterionName.VesselRatio => options.Where(option => option.Slot.Route != AccessRoute.AxillaryGraft).Max(option => option.Ratio),
                CriterionName.InletMargin => inletMmHg - context.Rules[LimitName.InletPressureMmHg],
                CriterionName.ReturnMargin => context.Rules[LimitName.ReturnPressureMmHg] - returnMmHg,
                CriterionName.OxygenDelivery => delivery,
                CriterionName.Saturation => saturation * 100,
                CriterionName.RecirculationBound => RecirculationBound(flowLPerMin),
                CriterionName.CirculatorySupport => Math.Min(1, arterial / target),
                CriterionName.LeftVentricularLoad => Math.Min(1, arterial / target),
                CriterionName.LimbThreat => LimbThreat(options),
                CriterionName.Punctures => options.Count,
                CriterionName.GroinsUsed => GroinsUsed(options),
                CriterionName.SurgicalAccess => configuration.NeedsSurgery ? 1 : 0,
                _ => throw new InvalidOperationException($"No value for criterion {rules[i].Name}."),
            };
        }

        return values;
    }

    private double RecirculationBound(double flow) => configuration.Kind switch
    {
        SupportKind.VenoVenous => context.Gas.CompleteMixing(flow),
        SupportKind.VenoArterioVenous => context.Gas.CompleteMixing(flow * context.Rules[LimitName.VenousShareOfReturn]),
        _ => 0,
    };

    private double ArterialFlow(double flow) => configuration.Kind switch
    {
        SupportKind.VenoArterial => flow,
        SupportKind.VenoArterioVenous => flow * (1 - context.Rules[LimitName.VenousShareOfReturn]),
        _ => 0,
    };

    /// <summary>An ordinal scale, not a probability: 0 no arterial cannula in a leg; half and more without distal perfusion; a quarter of that with it.</summary>
    private static double LimbThreat(IReadOnlyList<SlotOption> options)
    {
        SlotOption? artery = options.FirstOrDefault(option => option.Slot.Route == AccessRoute.FemoralArtery);
        if (artery is null)
        {
            return 0;
        }

        double narrow = Math.Clamp((artery.Ratio - 0.4) / 0.5, 0, 1);
        double bare = 0.5 + (0.5 * narrow);
        return options.Any(option => option.Slot.Role == CannulaRole.DistalPerfusion) ? bare / 4 : bare;
    }

    private static double GroinsUsed(IReadOnlyList<SlotOption> options)
    {
        bool right = false;
        bool left = false;
        foreach (SlotOption option in options)
        {
            bool groin = option.Slot.Route is AccessRoute.FemoralVein or AccessRoute.FemoralArtery;
            right |= groin && option.Side == BodySide.Right;
            left |= groin && option.Side == BodySide.Left;
        }

        return (right ? 1 : 0) + (left ? 1 : 0);
    }
}
