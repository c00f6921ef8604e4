using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Search;

/// <summary>Finds the devices and sides that could fill one slot of a configuration.</summary>
internal sealed class SlotSearch(PlanningContext context, ConfigurationTable configuration)
{
    /// <summary>Options kept for a slot that does not reach the axis: its choice does not touch the others.</summary>
    private const int KeptOffAxis = 4;

    /// <summary>A distal perfusion cannula is fed from the return line; the smallest that costs less than this is taken.</summary>
    private const double MostDistalDropMmHg = 100;
    private static readonly BodySide[] Sides = Enum.GetValues<BodySide>();

    /// <summary>Every device on every side that could fill a slot.</summary>
    /// <param name="slot">The slot.</param>
    /// <param name="flowLPerMin">Flow through its cannula when the plan carries what is needed.</param>
    /// <returns>The options, in the catalogue's order; for a slot off the axis only the narrowest that suffice.</returns>
    public List<SlotOption> For(RoleSlot slot, double flowLPerMin)
    {
        LumenPurpose purpose = Combination.PurposeOf(slot.Role);
        List<ZoneRule> rules = [.. context.Rules.Zones.Where(
            rule => rule.Role == slot.Role && rule.Configurations.Contains(configuration.Configuration))];
        (int Stops, int Warnings)[] findings = [.. Sides.Select(side => VesselFindings(slot.Route, side))];
        List<SlotOption> options = [];
        foreach (Cannula cannula in context.Catalogue.Cannulae)
        {
            if (!slot.Families.Contains(cannula.Family) || cannula.LumenFor(purpose) is null || !OnHand(cannula))
            {
                continue;
            }

            foreach (BodySide side in Sides)
            {
                if (Option(slot, cannula, side, purpose, rules, findings[(int)side]) is SlotOption option)
                {
                    options.Add(option);
                }
            }
        }

        return VenousEntry.Reaches(slot.Route) || options.Count == 0 ? options : [.. BestOffAxis(options, flowLPerMin)];
    }

    private SlotOption? Option(
        RoleSlot slot, Cannula cannula, BodySide side, LumenPurpose purpose, List<ZoneRule> rules, (int Stops, int Warnings) findings)
    {
        double ratio = cannula.OuterDiameterMm / context.Vessels.DiameterMm(slot.Route, side).Value;
        bool artery = slot.Route is AccessRoute.FemoralArtery or AccessRoute.AxillaryGraft or AccessRoute.SuperficialFemoralArtery;
        double most = context.Rules[artery ? LimitName.CannulaToArteryStop : LimitName.CannulaToVeinStop];
        if (ratio > most || (slot.Route == AccessRoute.AxillaryGraft && TooNarrowForGraft(side)))
        {
            return null;
        }

        DepthWindows? windows = null;
        if (VenousEntry.Reaches(slot.Route))
        {
            windows = DepthWindows.Of(
                cannula, new VenousEntry(slot.Route, side), rules, context.Zones, context.Landmarks, context.LengthOutsideMm, context.Rows);
            if (windows is null)
            {
                return null;
            }

            // Which anatomies it suits is known now. The depths are wanted again for pairs of venous cannulae, one by one, and
            // for the plans that are shown; computing them again is cheaper than holding the rows of every device.
            windows.Release();
        }

        return new SlotOption(
            slot,
            cannula,
            side,
            ratio,
            context.Pressure(cannula, purpose),
            slot.Role == CannulaRole.DualLumen ? context.Pressure(cannula, LumenPurpose.Return) : null,
            windows,
            findings.Stops,
            findings.Warnings);
    }

    /// <summary>A graft can be as wide as one likes; the artery it is sewn to cannot.</summary>
    private bool TooNarrowForGraft(BodySide side) =>
        context.Axis.Median(AccessVessels.DimensionOf(VesselName.AxillaryArtery, side)!.Value) < context.Rules[LimitName.AxillaryArteryForGraftMm];

    private bool OnHand(Cannula cannula) =>
        context.Case.DevicesOnHand.Count == 0 || context.Case.DevicesOnHand.Contains(cannula.Id, StringComparer.Ordinal);

    private (int Stops, int Warnings) VesselFindings(AccessRoute route, BodySide side)
    {
        int stops = 0;
        int warnings = 0;
        foreach (FindingRule rule in context.Rules.Findings)
        {
            bool applies = CaseFacts.IsOfOneVessel(rule.Fact)
                && (rule.Routes.Count == 0 || rule.Routes.Contains(route))
                && rule.State == FactState.Present
                && context.Facts.Of(rule.Fact, route, side) == Finding.Present;
            stops += applies && rule.Grade == FindingGrade.Stop ? 1 : 0;
            warnings += applies && rule.Grade == FindingGrade.Warning ? 1 : 0;
        }

        return (stops, warnings);
    }

    private IEnumerable<SlotOption> BestOffAxis(List<SlotOption> options, double flow)
    {
        bool distal = options[0].Slot.Role == CannulaRole.DistalPerfusion;
        double most = distal ? MostDistalDropMmHg : context.Rules[LimitName.ReturnPressureMmHg] / 2;
        return options
            .GroupBy(option => option.Side)
            .SelectMany(side => side
                .OrderBy(option => option.Drop.DropMmHg(flow) > most ? 1 : 0)
                .ThenBy(option => option.Ratio)
                .ThenBy(option => option.Cannula.Id, StringComparer.Ordinal)
                .Take(distal ? 1 : KeptOffAxis));
    }
}
