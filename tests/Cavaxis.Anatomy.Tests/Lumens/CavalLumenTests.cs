using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Tests.Lumens;

public class CavalLumenTests
{
    private const ulong Seed = 20260901;

    private static readonly AxisDistribution Adult = PopulationModel.For(Bodies.Adult);

    private static CavalLumen Median => new(LumenShape.OfMedians(Adult));

    [Fact]
    public void Lengths_along_the_trunk_are_those_of_the_axis()
    {
        foreach (CavalLumen lumen in Sampled(200))
        {
            SweptTube trunk = lumen.Trunk;
            double length = 0;
            Vector3D before = trunk.PointAt(trunk.StartMm);
            foreach (CavalLandmark landmark in new[] { CavalLandmark.BrachiocephalicConfluence, CavalLandmark.Scaj, CavalLandmark.Icaj, CavalLandmark.RenalVein, CavalLandmark.RightGroinSkin })
            {
                double from = trunk.StartMm + length;
                double to = lumen.Axis[landmark];
                double walked = 0;
                for (int i = 1; i <= 400; i++)
                {
                    Vector3D at = trunk.PointAt(from + ((to - from) * i / 400));
                    walked += (at - before).Length;
                    before = at;
                }

                // The one-dimensional model takes the way through the atrium to second order in its slopes.
                Assert.Equal(to - from, walked, Math.Max(0.3, 0.02 * (to - from)));
                length = to - trunk.StartMm;
            }
        }
    }

    [Fact]
    public void Caval_veins_meet_at_the_bends_and_the_offset_of_the_axis()
    {
        foreach (CavalLumen lumen in Sampled(200))
        {
            Vector3D upper = lumen.Trunk.DirectionAt(0);
            Vector3D lower = lumen.Trunk.DirectionAt(lumen.Axis[CavalLandmark.Icaj]);

            // The model bends in each plane against the chord; seen in the planes of the body a lean of the other plane changes it by a degree or two.
            double Frontal(Vector3D v) => Math.Atan2(-v.X, -v.Z) * 180 / Math.PI;
            double Sagittal(Vector3D v) => Math.Atan2(v.Y, -v.Z) * 180 / Math.PI;
            Assert.Equal(lumen.Shape[AxisDimension.CavalBendFrontal], Frontal(lower) - Frontal(upper), 3.0);
            Assert.Equal(lumen.Shape[AxisDimension.CavalBendSagittal], Sagittal(lower) - Sagittal(upper), 3.0);
            Vector3D mouth = lumen.PointOf(CavalLandmark.Icaj);
            Assert.Equal(lumen.Shape[AxisDimension.AtrialSpan], mouth.Length, 0.01);
            Assert.Equal(lumen.Shape[AxisDimension.MouthOffset], -mouth.X, 0.01);
        }
    }

    [Fact]
    public void Every_landmark_and_the_whole_line_lie_well_inside_of_a_thousand_anatomies()
    {
        foreach (CavalLumen lumen in Sampled(1000))
        {
            SweptTube trunk = lumen.Trunk;
            for (double arc = trunk.StartMm; arc <= trunk.EndMm; arc += 7)
            {
                Vector3D at = trunk.PointAt(arc);
                Assert.True(lumen.At(at).DistanceMm < -0.3 * trunk.RadiusAt(arc), $"{arc} of {trunk.StartMm} to {trunk.EndMm}: {lumen.At(at).DistanceMm}, radius {trunk.RadiusAt(arc)}");
            }

            foreach (CavalLandmark landmark in Enum.GetValues<CavalLandmark>())
            {
                Assert.True(lumen.At(lumen.PointOf(landmark)).DistanceMm < 0, $"{landmark} {lumen.At(lumen.PointOf(landmark)).DistanceMm}");
            }

            Assert.True(lumen.At(lumen.ValveCentreMm).DistanceMm < -5, $"valve {lumen.At(lumen.ValveCentreMm).DistanceMm}");
        }
    }

    [Fact]
    public void The_gradient_is_that_of_the_distance_and_joins_without_a_step()
    {
        Random random = new(7);
        foreach (CavalLumen lumen in Sampled(20))
        {
            int looked = 0;
            while (looked < 200)
            {
                Vector3D at = Near(lumen, random);
                LumenPoint here = lumen.At(at);
                if (Math.Abs(here.DistanceMm) > 4)
                {
                    continue;
                }

                looked++;
                const double Step = 1e-5;
                Vector3D numeric = new(
                    (lumen.At(at + new Vector3D(Step, 0, 0)).DistanceMm - lumen.At(at - new Vector3D(Step, 0, 0)).DistanceMm) / (2 * Step),
                    (lumen.At(at + new Vector3D(0, Step, 0)).DistanceMm - lumen.At(at - new Vector3D(0, Step, 0)).DistanceMm) / (2 * Step),
                    (lumen.At(at + new Vector3D(0, 0, Step)).DistanceMm - lumen.At(at - new Vector3D(0, 0, Step)).DistanceMm) / (2 * Step));
                Assert.True((numeric - here.Outward).Length < 2e-3, $"{at}: {numeric} against {here.Outward}");
                Assert.InRange(here.Outward.Length, 0.2, 1.35);
            }
        }
    }

    [Fact]
    public void Places_are_named_after_the_part_they_lie_in()
    {
        CavalLumen lumen = Median;
        CavalAxis axis = lumen.Axis;
        Assert.Equal(LumenSite.NeckVein, lumen.SiteOf(lumen.Trunk.PointAt(axis[CavalLandmark.RightNeckSkin] + 40)));
        Assert.Equal(LumenSite.UpperSvc, lumen.SiteOf(lumen.Trunk.PointAt(0.8 * axis[CavalLandmark.BrachiocephalicConfluence])));
        Assert.Equal(LumenSite.LowerSvc, lumen.SiteOf(lumen.Trunk.PointAt(-5)));
        Assert.Equal(LumenSite.RightAtrium, lumen.SiteOf(lumen.Trunk.PointAt(axis[CavalLandmark.Icaj] / 2)));
        Assert.Equal(LumenSite.SuprahepaticIvc, lumen.SiteOf(lumen.Trunk.PointAt(axis[CavalLandmark.Icaj] + 8)));
        Assert.Equal(LumenSite.InfrahepaticIvc, lumen.SiteOf(lumen.Trunk.PointAt(axis[CavalLandmark.RenalVein] - 20)));
        Assert.Equal(LumenSite.InfrarenalIvc, lumen.SiteOf(lumen.Trunk.PointAt(axis[CavalLandmark.RenalVein] + 20)));
        Assert.Equal(LumenSite.IliofemoralVein, lumen.SiteOf(lumen.Trunk.PointAt(axis[CavalLandmark.RightGroinSkin] - 40)));
        Assert.Equal(LumenSite.RightVentricle, lumen.SiteOf(lumen.ValveCentreMm + (25 * lumen.ValveDirection)));
        Assert.Equal(LumenSite.RightAtrium, lumen.SiteOf(lumen.ValveCentreMm - (8 * lumen.ValveDirection)));
        Assert.Equal(LumenSite.Outside, lumen.SiteOf(new Vector3D(0, 200, 0)));
    }

    [Fact]
    public void Entries_lead_from_the_skin_into_the_vein()
    {
        foreach (CavalLumen lumen in Sampled(100))
        {
            foreach (SkinSite site in Enum.GetValues<SkinSite>())
            {
                SkinTract tract = lumen.EntryAt(site);
                Assert.True(tract.TractMm >= 5, $"{site} {tract.TractMm}");
                Assert.Equal(1, tract.Inward.Length, 9);
                Assert.True(lumen.At(tract.PointMm + (tract.TractMm * tract.Inward)).DistanceMm < -1);
                bool neck = site is SkinSite.RightNeck or SkinSite.LeftNeck;
                Assert.True(neck ? tract.Inward.Z < 0 : tract.Inward.Z > 0);
                Assert.True(tract.Inward.Y > 0);
                Assert.True(neck || (site == SkinSite.RightGroin ? tract.PointMm.X < 0 : tract.PointMm.X > 0));
            }
        }
    }

    [Fact]
    public void What_is_measured_changes_the_lumen_and_what_is_needed_widens_it()
    {
        CavalLumen wide = new(LumenShape.OfMedians(Adult).With(AxisDimension.SvcDiameter, 30));
        Assert.Equal(15, wide.Trunk.RadiusAt(-10), 6);
        Assert.Equal(6.5, new CavalLumen(LumenShape.OfMedians(Adult), 6.5).Trunk.RadiusAt(wide.Trunk.StartMm), 6);
        Assert.NotEqual(Median.Shape[LumenDimension.HepaticVeinAngle], LumenShape.OfSample(AxisSampler.Draw(Adult, 3, Seed), 2, Seed)[LumenDimension.HepaticVeinAngle]);
    }

    [Fact]
    public void The_same_sample_and_seed_give_the_same_shape_and_the_draws_follow_their_table()
    {
        AxisSamples samples = AxisSampler.Draw(Adult, 4000, Seed);
        LumenShape[] shapes = [.. Enumerable.Range(0, samples.Count).Select(i => LumenShape.OfSample(samples, i, Seed))];
        AxisSamples part = new(10);
        AxisSampler.Fill(Adult, part, Seed, first: 100);
        Assert.Equal(shapes[103][LumenDimension.AzygosHeight], LumenShape.OfSample(part, 3, Seed, first: 100)[LumenDimension.AzygosHeight]);
        foreach (LumenParameter row in LumenTable.Rows)
        {
            double[] drawn = [.. shapes.Select(s => s[row.Dimension]).Order()];
            Assert.InRange(drawn[0], row.Low, row.High);
            Assert.InRange(drawn[^1], row.Low, row.High);
            double spread = row.Scale == LatentScale.Logarithmic ? row.Spread * row.Middle : row.Spread;
            Assert.Equal(row.Middle, drawn[drawn.Length / 2], 4 * 1.25 * spread / Math.Sqrt(drawn.Length));
        }
    }

    private static IEnumerable<CavalLumen> Sampled(int count)
    {
        AxisSamples samples = AxisSampler.Draw(Adult, count, Seed);
        return Enumerable.Range(0, count).Select(i => new CavalLumen(LumenShape.OfSample(samples, i, Seed)));
    }

    private static Vector3D Near(CavalLumen lumen, Random random)
    {
        SweptTube tube = lumen.Joined.Parts[random.Next(lumen.Joined.Parts.Length)];
        double arc = tube.StartMm + (random.NextDouble() * (tube.EndMm - tube.StartMm));
        Vector3D aside = new Vector3D(random.NextDouble() - 0.5, random.NextDouble() - 0.5, random.NextDouble() - 0.5).Unit;
        return tube.PointAt(arc) + ((tube.RadiusAt(arc) + (4 * (random.NextDouble() - 0.5))) * aside);
    }
}
