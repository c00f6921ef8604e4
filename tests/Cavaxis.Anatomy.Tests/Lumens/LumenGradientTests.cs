using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Lumens;

public class LumenGradientTests
{
    [Fact]
    public void Beside_a_tube_of_one_radius_the_distance_is_that_of_the_nearest_of_many_points_of_its_line() =>
        Gen.Select(LumenGen.Even, LumenGen.Beside.Array[6]).Sample(
            static (sketch, places) =>
            {
                SweptTube tube = sketch.Made();
                Vector3D[] line = [.. Enumerable.Range(0, 8001).Select(i => tube.PointAt(tube.StartMm + ((tube.EndMm - tube.StartMm) * i / 8000)))];
                double apart = (tube.EndMm - tube.StartMm) / 8000;
                foreach (Vector3D at in places.Select(p => LumenGen.Place(tube, p)))
                {
                    // A row of points half a spacing h to the side of the foot is farther by at most h²/8d.
                    double nearest = line.Min(p => (p - at).Length);
                    double got = tube.At(at).DistanceMm + sketch.RadiiMm[0];
                    Assert.InRange(got, nearest - (apart * apart / (4 * Math.Max(nearest, 1e-3))) - 1e-9, nearest + 1e-9);
                }
            },
            iter: 100);

    [Fact]
    public void The_gradient_of_a_tube_of_one_radius_has_length_one_and_leads_straight_out() =>
        Gen.Select(LumenGen.Even, LumenGen.Beside).Sample(
            static (sketch, place) =>
            {
                SweptTube tube = sketch.Made();
                LumenPoint at = tube.At(LumenGen.Place(tube, place));
                Assert.Equal(1, at.Outward.Length, 1e-9);
                LumenPoint further = tube.At(LumenGen.Place(tube, place) + (2 * at.Outward));
                Assert.Equal(at.DistanceMm + 2, further.DistanceMm, 1e-6);
            },
            iter: 1000);

    [Fact]
    public void No_distance_to_a_tube_of_one_radius_changes_faster_than_the_place() =>
        Gen.Select(LumenGen.Even, LumenGen.Beside, LumenGen.Vector(3)).Sample(
            static (sketch, place, step) =>
            {
                SweptTube tube = sketch.Made();
                Vector3D at = LumenGen.Place(tube, place);
                Assert.True(Math.Abs(tube.At(at + step).DistanceMm - tube.At(at).DistanceMm) <= step.Length + 1e-9);
            },
            iter: 1000);

    [Fact]
    public void The_gradient_of_a_tapering_tube_is_that_of_its_distance() =>
        Gen.Select(LumenGen.Tapering, LumenGen.Beside.Array[10]).Sample(
            static (sketch, places) => AssertGradients(sketch.Made(), places.Select(p => LumenGen.Place(sketch.Made(), p)).Where(p => LumenGen.IsOffTheLine(sketch.Made(), p))),
            iter: 200);

    [Fact]
    public void A_union_lies_between_the_nearest_part_and_a_quarter_of_the_blend_outside_of_it() =>
        Gen.Select(LumenGen.Tapering.Array[2], LumenGen.Beside.Array[10], Gen.Double[0.5, 6]).Sample(
            static (sketches, places, blend) =>
            {
                SmoothUnion union = new([sketches[0].Made(), (sketches[1] with { From = sketches[0].From }).Made()], blend);
                Vector3D[] at = [.. places.Select((p, i) => LumenGen.Place(union.Parts[i % 2], p))];
                AssertGradients(union, at.Where(p => union.Parts.All(part => LumenGen.IsOffTheLine(part, p))));
                Assert.All(at, point =>
                {
                    double nearest = Math.Min(union.Parts[0].At(point).DistanceMm, union.Parts[1].At(point).DistanceMm);
                    Assert.InRange(union.At(point).DistanceMm, nearest - (blend / 4) - 1e-12, nearest);
                });
            },
            iter: 200);

    [Fact]
    public void The_gradient_of_anybodys_lumen_is_that_of_its_distance_near_the_wall() =>
        Gen.Select(LumenGen.Anatomy, LumenGen.Beside.Array[30]).Sample(
            static (lumen, places) => AssertGradients(
                lumen,
                places.Select((p, i) => LumenGen.Place(lumen.Joined.Parts[i % lumen.Joined.Parts.Length], p with { Radii = 0.7 + (0.375 * p.Radii) }))
                    .Where(p => lumen.Joined.Parts.All(part => LumenGen.IsOffTheLine(part, p)))),
            iter: 100);

    /// <summary>
    /// Along each axis the gradient is the difference to one side at least: where a knot or the middle between two stretches of a line lies within
    /// the step, the other side has another gradient. A knot moves the nearest place by its rounding, 1e-7 mm, which gives the differences their noise.
    /// </summary>
    private static void AssertGradients(ILumen lumen, IEnumerable<Vector3D> places)
    {
        const double Step = 1e-4;
        const double Within = 1e-3;
        foreach (Vector3D at in places)
        {
            LumenPoint here = lumen.At(at);
            foreach (Vector3D axis in new Vector3D[] { new(1, 0, 0), new(0, 1, 0), new(0, 0, 1) })
            {
                double before = (here.DistanceMm - lumen.At(at - (Step * axis)).DistanceMm) / Step;
                double after = (lumen.At(at + (Step * axis)).DistanceMm - here.DistanceMm) / Step;
                double told = here.Outward.Dot(axis);
                Assert.True(Math.Min(Math.Abs(told - before), Math.Abs(told - after)) < Within, $"{at} along {axis}: {before} and {after}, told {told}");
            }
        }
    }
}
