using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Tests.Search;

public class CaseFactsTests
{
    private static readonly CaseFact[] OfTheCase = [.. Enum.GetValues<CaseFact>().Where(fact => !CaseFacts.IsOfOneVessel(fact))];
    private static readonly CaseFact[] OfAVessel = [.. Enum.GetValues<CaseFact>().Where(CaseFacts.IsOfOneVessel)];

    /// <summary>Facts that follow from a severity which was graded otherwise, from the goal, or from the age, have no unknown state of their own.</summary>
    private static readonly CaseFact[] Derived = [CaseFact.AorticRegurgitationMild, CaseFact.LungsFailWhileHeartEjects, CaseFact.UnderFiveYears];

    [Fact]
    public void What_a_case_does_not_say_is_unknown_and_never_absent()
    {
        CaseFacts facts = new(Cases.Bare);
        Assert.All(OfTheCase.Except(Derived), fact => Assert.Equal(Finding.Unknown, facts.Of(fact)));
        foreach (AccessRoute route in Enum.GetValues<AccessRoute>())
        {
            Assert.All(OfAVessel, fact => Assert.Equal(Finding.Unknown, facts.Of(fact, route, BodySide.Left)));
        }
    }

    [Fact]
    public void An_obstacle_is_what_the_case_says_of_it()
    {
        foreach (Finding said in Enum.GetValues<Finding>())
        {
            ObstacleSection all = new()
            {
                CavalFilter = said,
                PacingLeads = said,
                VenousStent = said,
                OpenOvalForamen = said,
                TricuspidProsthesis = said,
                CentralThrombus = said,
                LeftVentricularThrombus = said,
                AorticDissection = said,
                AortoIliacDisease = said,
                HostileNeck = said,
                AbdominalHypertension = said,
            };
            CaseFacts facts = new(Cases.Bare with { Obstacles = all });
            CaseFact[] obstacles =
            [
                CaseFact.CavalFilter, CaseFact.PacingLeads, CaseFact.VenousStent, CaseFact.OpenOvalForamen, CaseFact.TricuspidProsthesis,
                CaseFact.CentralThrombus, CaseFact.LeftVentricularThrombus, CaseFact.AorticDissection, CaseFact.AortoIliacDisease,
                CaseFact.HostileNeck, CaseFact.AbdominalHypertension,
            ];
            Assert.All(obstacles, fact => Assert.Equal(said, facts.Of(fact)));
        }
    }

    [Theory]
    [InlineData(Severity.Unknown, Finding.Unknown)]
    [InlineData(Severity.None, Finding.Absent)]
    [InlineData(Severity.Mild, Finding.Absent)]
    [InlineData(Severity.Moderate, Finding.Present)]
    [InlineData(Severity.Severe, Finding.Present)]
    public void At_least_moderate_counts_moderate_and_severe(Severity severity, Finding expected)
    {
        CaseFacts facts = new(Cases.Bare with
        {
            Heart = new HeartSection { AorticRegurgitation = severity, RightVentricularDysfunction = severity },
        });
        Assert.Equal(expected, facts.Of(CaseFact.AorticRegurgitationModerate));
        Assert.Equal(expected, facts.Of(CaseFact.RightVentricularDysfunction));
    }

    [Theory]
    [InlineData(Availability.Missing, Availability.Missing, Finding.Present)]
    [InlineData(Availability.Missing, Availability.Unknown, Finding.Unknown)]
    [InlineData(Availability.Unknown, Availability.Unknown, Finding.Unknown)]
    [InlineData(Availability.Unknown, Availability.OnHand, Finding.Absent)]
    [InlineData(Availability.Missing, Availability.OnHand, Finding.Absent)]
    public void Nothing_is_on_hand_only_when_all_means_are_known_to_be_missing(Availability one, Availability other, Finding expected)
    {
        CaseFacts facts = new(Cases.Bare with
        {
            Resources = new ResourceSection { TransoesophagealEcho = one, TransthoracicEcho = other },
        });
        Assert.Equal(expected, facts.Of(CaseFact.NoEcho));
    }

    [Fact]
    public void A_vessel_is_confirmed_by_two_different_means_and_by_no_fewer()
    {
        Assert.Equal(Finding.Unknown, Confirmed(VesselConfirmation.Doppler));
        Assert.Equal(Finding.Unknown, Confirmed(VesselConfirmation.Doppler, VesselConfirmation.Doppler));
        Assert.Equal(Finding.Absent, Confirmed(VesselConfirmation.Doppler, VesselConfirmation.Compression));
    }

    [Fact]
    public void An_occlusion_of_one_side_says_nothing_of_the_other()
    {
        CaseFacts facts = new(Cases.Bare with { Vessels = [Vein(BodySide.Right, Patency.Occluded)] });
        Assert.Equal(Finding.Present, facts.Of(CaseFact.VesselOccluded, AccessRoute.FemoralVein, BodySide.Right));
        Assert.Equal(Finding.Absent, facts.Of(CaseFact.VesselNarrowed, AccessRoute.FemoralVein, BodySide.Right));
        Assert.Equal(Finding.Unknown, facts.Of(CaseFact.VesselOccluded, AccessRoute.FemoralVein, BodySide.Left));
        Assert.Equal(Finding.Unknown, facts.Of(CaseFact.VesselOccluded, AccessRoute.FemoralArtery, BodySide.Right));
    }

    [Fact]
    public void A_fact_asked_the_wrong_way_is_refused()
    {
        CaseFacts facts = new(Cases.Bare);
        Assert.All(OfAVessel, fact => Assert.Throws<ArgumentOutOfRangeException>(() => facts.Of(fact)));
        Assert.All(OfTheCase, fact => Assert.Throws<ArgumentOutOfRangeException>(
            () => facts.Of(fact, AccessRoute.Jugular, BodySide.Right)));
    }

    private static VesselEntry Vein(BodySide side, Patency patency) =>
        new() { Vessel = VesselName.CommonFemoralVein, Side = side, Patency = patency };

    private static Finding Confirmed(params VesselConfirmation[] by) => new CaseFacts(Cases.Bare with
    {
        Vessels = [Vein(BodySide.Right, Patency.Patent) with { ConfirmedBy = by }],
    }).Of(CaseFact.VesselNotConfirmed, AccessRoute.FemoralVein, BodySide.Right);
}
