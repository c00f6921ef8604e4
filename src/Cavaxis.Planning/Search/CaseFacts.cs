using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Search;

/// <summary>Answers the questions that finding rules ask of a case. Unknown stays unknown.</summary>
internal sealed class CaseFacts(CaseFile caseFile)
{
    /// <summary>Facts that belong to one vessel or side rather than to the whole case.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>Whether it has to be asked for each cannula.</returns>
    public static bool IsOfOneVessel(CaseFact fact) => fact is CaseFact.LimbDiseaseOnSide or CaseFact.HostileGroinOnSide
        or CaseFact.VesselOccluded or CaseFact.VesselNarrowed or CaseFact.VesselThrombus or CaseFact.VesselNotConfirmed;

    /// <summary>The state of a fact of the whole case.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>Whether it is present, absent or unknown.</returns>
    public Finding Of(CaseFact fact)
    {
        ObstacleSection o = caseFile.Obstacles;
        HeartSection h = caseFile.Heart;
        ResourceSection r = caseFile.Resources;
        return fact switch
        {
            CaseFact.CavalFilter => o.CavalFilter,
            CaseFact.PacingLeads => o.PacingLeads,
            CaseFact.VenousStent => o.VenousStent,
            CaseFact.OpenOvalForamen => o.OpenOvalForamen,
            CaseFact.TricuspidProsthesis => o.TricuspidProsthesis,
            CaseFact.CentralThrombus => o.CentralThrombus,
            CaseFact.LeftVentricularThrombus => o.LeftVentricularThrombus,
            CaseFact.AorticDissection => o.AorticDissection,
            CaseFact.AortoIliacDisease => o.AortoIliacDisease,
            CaseFact.HostileNeck => o.HostileNeck,
            CaseFact.AbdominalHypertension => o.AbdominalHypertension,
            CaseFact.AorticRegurgitationModerate => AtLeastModerate(h.AorticRegurgitation),
            CaseFact.AorticRegurgitationMild => h.AorticRegurgitation == Severity.Mild ? Finding.Present : Finding.Absent,
            CaseFact.RightVentricularDysfunction => AtLeastModerate(h.RightVentricularDysfunction),
            CaseFact.NoEcho => NoneOf(r.TransoesophagealEcho, r.TransthoracicEcho),
            CaseFact.NoWireImaging => NoneOf(r.TransoesophagealEcho, r.Fluoroscopy, r.HybridRoom),
            CaseFact.NoStiffWire => NoneOf(r.StiffWire),
            CaseFact.NoVascularSurgeon => NoneOf(r.VascularSurgeon),
            CaseFact.GoalNeedsCirculation => Goal(SupportGoal.Circulation, SupportGoal.Both, SupportGoal.Arrest),
            CaseFact.GoalIsGasExchange => Goal(SupportGoal.GasExchange),
            CaseFact.GoalIsArrest => Goal(SupportGoal.Arrest),
            CaseFact.UnderFiveYears => caseFile.Patient.AgeYears < 5 ? Finding.Present : Finding.Absent,
            CaseFact.LungsFailWhileHeartEjects => caseFile.Support.Goal == SupportGoal.Both ? Finding.Present : Finding.Absent,
            _ => throw new ArgumentOutOfRangeException(nameof(fact), fact, "This fact belongs to one vessel."),
        };
    }

    /// <summary>The state of a fact of one vessel.</summary>
    /// <param name="fact">The fact.</param>
    /// <param name="route">Route of the cannula.</param>
    /// <param name="side">Its side.</param>
    /// <returns>Whether it is present, absent or unknown.</returns>
    public Finding Of(CaseFact fact, AccessRoute route, BodySide side)
    {
        ObstacleSection o = caseFile.Obstacles;
        VesselName name = AccessVessels.NameOf(route);
        VesselEntry? entry = caseFile.Vessels.FirstOrDefault(v => v.Vessel == name && v.Side == side);
        bool right = side == BodySide.Right;
        return fact switch
        {
            CaseFact.LimbDiseaseOnSide => right ? o.RightLimbDisease : o.LeftLimbDisease,
            CaseFact.HostileGroinOnSide => right ? o.HostileRightGroin : o.HostileLeftGroin,
            CaseFact.VesselOccluded => HasPatency(entry, Patency.Occluded),
            CaseFact.VesselNarrowed => HasPatency(entry, Patency.Narrowed),
            CaseFact.VesselThrombus => entry?.Thrombus ?? Finding.Unknown,
            CaseFact.VesselNotConfirmed => entry is not null && entry.ConfirmedBy.Distinct().Count() >= 2 ? Finding.Absent : Finding.Unknown,
            _ => throw new ArgumentOutOfRangeException(nameof(fact), fact, "This fact belongs to the whole case."),
        };
    }

    private Finding Goal(params ReadOnlySpan<SupportGoal> goals) => caseFile.Support.Goal is not SupportGoal goal
        ? Finding.Unknown
        : goals.Contains(goal) ? Finding.Present : Finding.Absent;

    private static Finding HasPatency(VesselEntry? entry, Patency patency) => (entry?.Patency ?? Patency.Unknown) switch
    {
        Patency.Unknown => Finding.Unknown,
        Patency seen => seen == patency ? Finding.Present : Finding.Absent,
    };

    private static Finding AtLeastModerate(Severity severity) => severity switch
    {
        Severity.Unknown => Finding.Unknown,
        Severity.Moderate or Severity.Severe => Finding.Present,
        _ => Finding.Absent,
    };

    private static Finding NoneOf(params ReadOnlySpan<Availability> means)
    {
        bool unknown = false;
        foreach (Availability one in means)
        {
            if (one == Availability.OnHand)
            {
                return Finding.Absent;
            }

            unknown |= one == Availability.Unknown;
        }

        return unknown ? Finding.Unknown : Finding.Present;
    }
}
