using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Tests.Insertion;

public class InsertionStudyTests
{
    private static CaseFile Adult => BentAdult.Case;

    private static PlanningResult Planning => BentAdult.Planning;

    [Fact]
    public void Shares_add_up_and_no_piece_lies_in_a_wall_by_more_than_a_tenth_of_a_millimetre()
    {
        InsertionResult result = Study(WireClass.Stiff, 12);
        Assert.NotEmpty(result.Cannulae);
        foreach (CannulaInsertion cannula in result.Cannulae)
        {
            Assert.Equal(1, cannula.WireEnds.Sum(static e => e.Share.Value), 9);
            Assert.Equal(1, cannula.WireEnds.Sum(static e => e.AfterCannula.Value), 9);
            Assert.Equal(1, cannula.FirstWrong.Sum(static f => f.Share.Value), 9);
            Assert.Equal(cannula.Right.Value, cannula.FirstWrong.Single(static f => f.Phase == InsertionPhase.None).Share.Value, 9);
            Assert.Equal(1, cannula.CannulaTips.Values.Sum(), 9);
            Assert.InRange(cannula.DeepestPenetrationMm, 0, 0.1);
            Assert.All(cannula.NotFollowed.Keys, static reason => Assert.Matches("^[A-Za-z]+: [A-Za-z]+$", reason));
            Assert.Equal(12, cannula.Paths!.Wires.Count);
            Assert.True(cannula.CannulaForceN.Value > 0);
        }

        Assert.Equal(result.Steps.Count, result.Steps[^1].Number);
        Assert.Contains("certified", result.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_seed_gives_the_same_result_to_the_byte()
    {
        string Json() => System.Text.Json.JsonSerializer.Serialize(Study(WireClass.Floppy, 10), Cavaxis.Planning.Json.CavaxisJson.Options);
        Assert.Equal(Json(), Json());
    }

    [Fact]
    public void A_pitfall_is_told_at_the_step_where_it_is_expected_and_nowhere_else()
    {
        InsertionResult result = Study(WireClass.Floppy, 10);
        foreach (ProcedureStep step in result.Steps)
        {
            double share = result.Cannulae.FirstOrDefault(c => c.Role == step.Cannula)?.FirstWrong.Single(f => f.Phase == step.Phase).Share.Value ?? 0;
            Assert.Equal(step.Phase != InsertionPhase.None && share >= 0.02, step.PredictedPitfall is not null);
        }

        foreach (CannulaInsertion cannula in result.Cannulae)
        {
            Assert.All(
                new[] { InsertionPhase.WireFeed, InsertionPhase.CannulaAdvance, InsertionPhase.Removal },
                phase => Assert.Single(result.Steps, s => s.Cannula == cannula.Role && s.Phase == phase));
        }
    }

    [Fact]
    public void Advice_compares_the_same_anatomies()
    {
        InsertionResult result = InsertionStudy.Of(
            Adult, DeviceCatalogue.BuiltIn, Planning, BentAdult.OneCannula, new InsertionOptions { Wire = WireClass.Standard, Anatomies = 10 });
        foreach (CannulaInsertion cannula in result.Cannulae)
        {
            Assert.True(cannula.Advice.Count >= 3);
            Assert.Equal(cannula.Advice.OrderByDescending(static a => a.Gain.Value).Select(static a => a.Words), cannula.Advice.Select(static a => a.Words));
            Assert.All(cannula.Advice, static a => Assert.Equal(a.RightAfter - a.RightBefore, a.Gain.Value, 9));
        }
    }

    [Theory]
    [InlineData(0, 10, 0, 0.2130)]
    [InlineData(5, 10, 0.2693, 0.7307)]
    [InlineData(10, 10, 0.7870, 1)]
    public void Shares_carry_Wilsons_interval(int count, int of, double low, double high)
    {
        // (p + z²/2n ± z √(p(1 − p)/n + z²/4n²))/(1 + z²/n), z = 1.6449 (Wilson 1927), by hand.
        Estimate share = WilsonShare.Of(count, of);
        Assert.Equal(count / (double)of, share.Value, 9);
        Assert.Equal(low, share.Low, 3);
        Assert.Equal(high, share.High, 3);
    }

    [Theory]
    [InlineData(WireClass.Floppy, 9.5, 291)]
    [InlineData(WireClass.Standard, 14.5, 445)]
    [InlineData(WireClass.Stiff, 17, 521)]
    [InlineData(WireClass.ExtraStiff, 158.4, 4857)]
    public void Classes_of_wire_hold_the_measured_stiffness(WireClass wire, double modulusGPa, double stiffnessNMm2)
    {
        // Bending stiffness of 0.889 mm wires from the moduli of Harrison et al. 2011 (shared reference, b.3).
        WireStiffness range = WireStiffness.Of(wire);
        Assert.InRange(modulusGPa, range.LowModulusGPa, range.HighModulusGPa);
        Assert.InRange(stiffnessNMm2, range.LowNMm2 - 1, range.HighNMm2 + 1);
        Assert.Equal(stiffnessNMm2, range.HighNMm2 * modulusGPa / range.HighModulusGPa, 1.0);
    }

    [Fact]
    public void Unknowns_lie_in_their_ranges_and_two_wires_meet_the_same_luck()
    {
        StiffnessRange cannula = new(1000, 4000);
        for (uint i = 0; i < 500; i++)
        {
            InsertionUnknowns stiff = InsertionUnknowns.Draw(WireClass.Stiff, cannula, i, 9);
            InsertionUnknowns floppy = InsertionUnknowns.Draw(WireClass.Floppy, cannula, i, 9);
            Assert.InRange(stiff.CannulaNMm2, 1000, 4000);
            Assert.InRange(stiff.WireFriction, 0.02, 0.3);
            Assert.InRange(stiff.WireNMm2, WireStiffness.Of(WireClass.Stiff).LowNMm2, WireStiffness.Of(WireClass.Stiff).HighNMm2);
            Assert.Equal(stiff with { WireNMm2 = 0 }, floppy with { WireNMm2 = 0 });
        }
    }

    [Fact]
    public void Too_few_anatomies_are_refused() => Assert.Throws<InputFaultException>(() => Study(WireClass.Stiff, 3));

    private static InsertionResult Study(WireClass wire, int anatomies) => BentAdult.Study(new InsertionOptions { Wire = wire, Anatomies = anatomies, Advice = false });
}
