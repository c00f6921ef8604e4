using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities;
using CsCheck;

namespace Cavaxis.Arteries.Tests.Scaling;

public class TreeScalingTests
{
    [Fact]
    public void Without_devices_every_end_gets_its_share_at_the_mean_pressure()
    {
        PatientTree tree = SampleTrees.Of();
        (double[] flow, _) = new SteadyTree(tree, null, 1).Solve(SampleTrees.Beds.MeanPressurePa);
        for (int i = 0; i < flow.Length; i++)
        {
            Assert.Equal(tree.Segments[i].RestFlowM3PerS, flow[i], 1e-9 * SampleTrees.Beds.FlowM3PerS);
        }

        Assert.Equal(SampleTrees.Beds.FlowM3PerS, flow[0], 1e-12);
    }

    [Fact]
    public void Compliance_of_vessels_and_ends_is_that_of_the_circulation()
    {
        PatientTree tree = SampleTrees.Of();
        double ends = tree.Segments.Sum(static s => s.EndComplianceM3PerPa ?? 0);

        // dV/dP of the thin wall of Poisson's ratio 1/2 at the reference pressure, summed by midpoints over the taper.
        double vessels = tree.Segments.Sum(static s => Enumerable.Range(0, 200).Sum(k =>
        {
            double radius = s.ProximalRadiusM + ((s.DistalRadiusM - s.ProximalRadiusM) * (k + 0.5) / 200);
            double wall = s.WallM * radius / s.ProximalRadiusM;
            return 1.5 * Math.PI * radius * radius * radius / (s.ModulusPa * wall) * s.LengthM / 200;
        }));
        Assert.Equal(SampleTrees.Beds.ComplianceM3PerPa, vessels + ends, 0.01 * SampleTrees.Beds.ComplianceM3PerPa);
    }

    [Fact]
    public void A_measured_diameter_replaces_the_populations_and_keeps_its_error()
    {
        PatientTree tree = SampleTrees.Of((AccessArtery.FemoralLeft, 6.4));
        Assert.Equal(Origin.Measured, tree.AccessDiametersMm[(int)AccessArtery.FemoralLeft].Origin);
        Assert.Equal(0.3, tree.AccessDiametersMm[(int)AccessArtery.FemoralLeft].Sd);
        Assert.Equal(Origin.Estimated, tree.AccessDiametersMm[(int)AccessArtery.FemoralRight].Origin);
        PatientSegment left = tree.Segments[ArterialTable.BuiltIn.IndexOf("femoral_L_I")];
        Assert.Equal(6.4e-3, left.ProximalRadiusM + left.DistalRadiusM, 1e-9);
    }

    [Fact]
    public void A_smaller_body_has_shorter_and_narrower_arteries_than_the_tables()
    {
        PatientTree small = TreeScaling.Of(ArterialTable.BuiltIn, new BodyHabitus(30, Sex.Female, 155, 50), [], SampleTrees.Beds);
        PatientTree adult = SampleTrees.Of();
        int aorta = ArterialTable.BuiltIn.IndexOf("thoracic_aorta_V");
        Assert.True(small.Segments[aorta].LengthM < adult.Segments[aorta].LengthM);
        Assert.True(small.Segments[aorta].ProximalRadiusM < adult.Segments[aorta].ProximalRadiusM);
    }

    [Fact]
    public void Age_stiffens_the_arteries() =>
        Gen.Select(Gen.Double[18, 80], Gen.Double[1, 25]).Sample(
            static (age, more) => Assert.True(TreeScaling.ComplianceForAge(age + more, 40) < TreeScaling.ComplianceForAge(age, 40)), iter: 100);
}
