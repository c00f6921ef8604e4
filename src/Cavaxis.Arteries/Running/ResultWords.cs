using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Arteries.Beats;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Arteries.Running;

/// <summary>Sentences that go with every result.</summary>
internal static class ResultWords
{
    private static readonly string[] Always =
    [
        "Blood is carried with the mean velocity of each cross-section: the front between the two kinds of blood is sharper than in a curved aorta with swirl, so that the zone is rather wider than given.",
        "The two halves of the brain are not joined (no circle of Willis); communicating arteries would make them more alike.",
        "Collaterals around the groin are left out: a leg behind a cannula that fills the artery may get more than given.",
        "The jet of the cannula's tip does not push: its momentum is left out.",
        "The coronary arteries are two short outlets without the squeeze of the heart muscle; their flow is too even over the beat.",
        "Carbon dioxide is not carried through the tree.",
        "Arterioles do not adapt to pressure or to oxygen; narrowed or diseased arteries are not known unless measured.",
    ];

    /// <summary>How the pump returns.</summary>
    public static string Return(ArterialReturn? entry)
    {
        if (entry is null)
        {
            return "no pump";
        }

        string artery = entry.Artery switch
        {
            AccessArtery.FemoralRight => "right femoral artery",
            AccessArtery.FemoralLeft => "left femoral artery",
            AccessArtery.AxillaryRight => "right axillary artery",
            _ => "left axillary artery",
        };
        string graft = entry.SideGraft ? " by a side graft" : string.Empty;
        string distal = entry.DistalPerfusion is null
            ? string.Empty
            : string.Create(CultureInfo.InvariantCulture, $", distal perfusion cannula {entry.DistalPerfusion.OuterDiameterFrench:F0} Fr");
        return string.Create(CultureInfo.InvariantCulture, $"{artery}{graft}, {entry.Cannula.OuterDiameterFrench:F0} Fr{distal}");
    }

    /// <summary>What was varied for the intervals.</summary>
    public static ImmutableArray<string> Varied(bool supported, int computed) => !supported ? [] :
    [
        .. computed < 2 ? (string[])["One of the varied cases could not be computed: the intervals of mixing zone and saturations rest on the other alone."] : [],
        string.Create(
            CultureInfo.InvariantCulture,
            $"Contractility of the left ventricle by {100 * ArterialNumbers.Value(ArterialConstant.ContractilityVaried):F0} % and pump flow by {100 * ArterialNumbers.Value(ArterialConstant.PumpFlowVaried):F0} % (one standard deviation each), together and against each other: mixing zone and saturations."),
        "Diameter of the artery, friction beside the cannula and resistance of the leg, one at a time: flow of the leg.",
        "Not varied: stiffness of the arteries, shares of the organs, oxygen contents of the two kinds of blood.",
    ];

    /// <summary>What was left out.</summary>
    public static ImmutableArray<string> NotModelled(ArterialSupportRequest request, PatientTree tree)
    {
        List<string> more = [];
        CirculationParameters p = request.Circulation;
        if (p[VentFlowLPerMin] > 0 || p[TransvalvularFlowLPerMin] > 0)
        {
            more.Add("A vent or a pump across the aortic valve acts on the closed loop only, not on the tree.");
        }

        double held = TreeModel.BalloonHeldMl(tree, p[BalloonVolumeMl]);
        if (held < p[BalloonVolumeMl] - 0.5)
        {
            more.Add(string.Create(
                CultureInfo.InvariantCulture, $"Of the balloon's {p[BalloonVolumeMl]:F0} mL the tree moves {held:F0} mL: it fills at most half of the model's aorta."));
        }

        if (p[ReflexGain] > 0)
        {
            more.Add("The reflex acts on the closed loop only; the tree keeps the resistance that it left.");
        }

        if (!request.Body.IsAdult)
        {
            more.Add("The tree is an adult's made smaller: a child's proportions differ.");
        }

        return [.. Always, .. more];
    }
}
