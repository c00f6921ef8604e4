using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Quantities;

namespace Cavaxis.Devices.Tests.Catalogue;

public class BuiltInCatalogueTests
{
    private static readonly DeviceCatalogue BuiltIn = DeviceCatalogue.BuiltIn;
    private static readonly Fluid Blood = new(1060, 3e-3);

    [Fact]
    public void Every_family_is_there_and_small_bodies_are_not_forgotten()
    {
        Assert.True(BuiltIn.Cannulae.Count >= 30);
        Assert.Equal(Enum.GetValues<CannulaFamily>().Order(), BuiltIn.Cannulae.Select(c => c.Family).Distinct().Order());
        Assert.Contains(BuiltIn.Cannulae, c => c.Family == CannulaFamily.SingleStageDrainage && c.OuterDiameterFrench <= 8);
        Assert.Contains(BuiltIn.Cannulae, c => c.Family == CannulaFamily.ArterialReturn && c.OuterDiameterFrench <= 8);
        Assert.Contains(BuiltIn.Cannulae, c => c.Family == CannulaFamily.BicavalDualLumen && c.OuterDiameterFrench <= 13);
        Assert.Contains(BuiltIn.MembraneLungs, l => l.RatedFlowLPerMin <= 1.5);
    }

    [Theory]
    [InlineData(CannulaFamily.SingleStageDrainage, "tip holes")]
    [InlineData(CannulaFamily.MultiStageDrainage, "tip holes", "stage 2", "stage 3", "stage 4", "stage 5")]
    [InlineData(CannulaFamily.VenousReturn, "return end", "return side holes")]
    [InlineData(CannulaFamily.ArterialReturn, "return end", "return side holes")]
    [InlineData(CannulaFamily.BicavalDualLumen, "inferior holes", "superior holes", "return port")]
    [InlineData(CannulaFamily.AtrialDualLumen, "return end", "drainage holes")]
    [InlineData(CannulaFamily.DistalPerfusion, "return end")]
    public void Hole_groups_carry_the_names_that_rules_use(CannulaFamily family, params string[] names)
    {
        IEnumerable<HoleGroup> groups = BuiltIn.Cannulae.Where(c => c.Family == family).SelectMany(c => c.Lumens).SelectMany(l => l.HoleGroups);
        Assert.All(groups, g => Assert.Contains(g.Name, names));
        Assert.Equal(names.Order(), groups.Select(g => g.Name).Distinct().Order());
    }

    [Fact]
    public void No_generic_geometry_claims_to_have_been_read() =>
        Assert.All(BuiltIn.Cannulae, c => Assert.Contains(c.GeometrySource.Certainty, new[] { Certainty.FromMemory, Certainty.Assumption }));

    [Fact]
    public void The_return_port_of_the_large_bicaval_sizes_lies_94_mm_above_the_tip() =>
        Assert.All(
            BuiltIn.Cannulae.Where(c => c.Family == CannulaFamily.BicavalDualLumen && c.OuterDiameterFrench >= 27),
            c => Assert.Equal(94, Assert.Single(c.LumenFor(LumenPurpose.Return)!.HoleGroups).FromTipMm));

    [Fact]
    public void A_larger_french_of_one_family_and_length_never_loses_more()
    {
        foreach (IGrouping<(CannulaFamily, double, int), Cannula> line in BuiltIn.Cannulae
            .Where(c => c.OuterDiameterFrench >= 15 && c.Lumens.Count == 1)
            .GroupBy(c => (c.Family, c.InsertableLengthMm, c.Lumens[0].HoleGroups.Count)))
        {
            double[] drops = [.. line.OrderBy(c => c.OuterDiameterFrench).Select(c => CannulaHydraulics.At(c, c.Lumens[0].Purpose, 4, Blood).PressureDropPa)];
            Assert.Equal(drops.OrderByDescending(d => d), drops);
        }
    }

    [Fact]
    public void Most_of_the_drained_blood_enters_the_stage_nearest_the_pump() =>
        Assert.All(BuiltIn.Cannulae.Where(c => c.Family == CannulaFamily.MultiStageDrainage), c =>
        {
            IReadOnlyList<double> shares = CannulaHydraulics.At(c, LumenPurpose.Drainage, 4, Blood).HoleShares;
            Assert.Equal(shares.Max(), shares[0]);
            Assert.True(shares[0] > 0.35);
        });

    [Fact]
    public void Every_lumen_can_be_computed_in_water_and_in_thick_blood() =>
        Assert.All(BuiltIn.Cannulae, c => Assert.All(c.Lumens, l =>
        {
            LumenFlow water = CannulaHydraulics.At(c, l.Purpose, 1, Water.At(20));
            LumenFlow thick = CannulaHydraulics.At(c, l.Purpose, 1, new Fluid(1065, 8e-3));
            Assert.True(thick.PressureDropPa > water.PressureDropPa);
            Assert.Equal(l.HoleGroups.Count, water.HoleShares.Count);
        }));

    [Fact]
    public void Every_membrane_lung_stays_below_fifty_millimetres_of_mercury_at_its_rated_flow() =>
        Assert.All(BuiltIn.MembraneLungs, (MembraneLung l) =>
            Assert.InRange(l.DropPa(l.RatedFlowLPerMin, Blood) / UnitFactors.PascalsPerMmHg, 5, 50));

    [Fact]
    public void The_largest_wire_passes_the_smallest_bore() =>
        Assert.All(BuiltIn.Cannulae, c => Assert.True(
            c.LargestWireMm < c.Lumens.Max(l => l.Segments.Min(s => s.InnerDiameterMm))));

    [Fact]
    public void Known_identifiers_are_found_and_unknown_ones_are_not()
    {
        Assert.NotNull(BuiltIn.FindCannula("drain-multi-25fr-55cm"));
        Assert.NotNull(BuiltIn.FindPump("pump-centrifugal-adult"));
        Assert.NotNull(BuiltIn.FindMembraneLung("lung-adult"));
        Assert.NotNull(BuiltIn.FindWire("wire-0.889mm-17gpa"));
        Assert.Null(BuiltIn.FindCannula("pump-centrifugal-adult"));
    }
}
