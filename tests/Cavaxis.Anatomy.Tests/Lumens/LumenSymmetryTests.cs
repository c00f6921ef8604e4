using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Lumens;

/// <summary>A distance belongs to the tube, not to the place where it lies: what is turned, shifted or mirrored keeps it.</summary>
public class LumenSymmetryTests
{
    [Fact]
    public void A_moved_or_mirrored_tube_has_the_same_distance_and_the_moved_gradient() =>
        Gen.Select(LumenGen.Tapering, RigidMotion.Any, LumenGen.Beside.Array[10]).Sample(
            static (sketch, motion, places) =>
            {
                (SweptTube here, SweptTube there) = (sketch.Made(), sketch.Moved(motion));
                foreach (Vector3D at in places.Select(p => LumenGen.Place(here, p)).Where(p => LumenGen.IsOffTheLine(here, p)))
                {
                    (TubePoint before, TubePoint after) = (here.Nearest(at), there.Nearest(motion.Place(at)));
                    Assert.Equal(before.DistanceMm, after.DistanceMm, 1e-8);
                    Assert.Equal(before.ArcMm, after.ArcMm, 1e-5);
                    Assert.InRange((motion.Turn(before.Outward) - after.Outward).Length, 0, 1e-6);
                }
            },
            iter: 300);

    [Fact]
    public void So_has_a_union_of_moved_or_mirrored_tubes() =>
        Gen.Select(LumenGen.Tapering.Array[2, 4], RigidMotion.Any, LumenGen.Beside.Array[10], Gen.Double[0.5, 6]).Sample(
            static (sketches, motion, places, blend) =>
            {
                SmoothUnion here = Crossing(sketches, static s => s.Made(), blend);
                SmoothUnion there = Crossing(sketches, s => s.Moved(motion), blend);
                foreach (Vector3D at in places.Select((p, i) => LumenGen.Place(here.Parts[i % here.Parts.Length], p)).Where(p => here.Parts.All(part => LumenGen.IsOffTheLine(part, p))))
                {
                    (LumenPoint before, LumenPoint after) = (here.At(at), there.At(motion.Place(at)));
                    Assert.Equal(before.DistanceMm, after.DistanceMm, 1e-8);
                    Assert.InRange((motion.Turn(before.Outward) - after.Outward).Length, 0, 1e-6);
                }
            },
            iter: 200);

    [Fact]
    public void A_straight_tube_is_the_mirror_image_of_itself_across_every_plane_through_its_line() =>
        Gen.Select(LumenGen.Vector(1).Where(static v => v.Length > 0.1), LumenGen.Vector(1), LumenGen.Beside, Gen.Double[4, 12].Array[3]).Sample(
            static (heading, other, place, radii) =>
            {
                SweptTube tube = new TubeSketch(default, heading.Unit, [(60, heading.Unit)], radii).Made();
                Vector3D normal = heading.Unit.Cross(other).Length > 0.05 ? heading.Unit.Cross(other).Unit : heading.Unit.Cross(Math.Abs(heading.Unit.X) < 0.6 ? new Vector3D(1, 0, 0) : new Vector3D(0, 1, 0)).Unit;
                Vector3D Mirror(Vector3D v) => v - (2 * v.Dot(normal) * normal);
                Vector3D at = LumenGen.Place(tube, place);
                Assert.Equal(tube.At(at).DistanceMm, tube.At(Mirror(at)).DistanceMm, 1e-9);
                Assert.True(!LumenGen.IsOffTheLine(tube, at) || (Mirror(tube.At(at).Outward) - tube.At(Mirror(at)).Outward).Length < 1e-7);
            },
            iter: 500);

    [Fact]
    public void The_order_of_two_tubes_in_a_union_does_not_matter() =>
        Gen.Select(LumenGen.Tapering.Array[2], LumenGen.Beside.Array[10], Gen.Double[0.5, 6]).Sample(
            static (sketches, places, blend) =>
            {
                SmoothUnion one = Crossing(sketches, static s => s.Made(), blend);
                SmoothUnion other = new([one.Parts[1], one.Parts[0]], blend);
                foreach (Vector3D at in places.Select(p => LumenGen.Place(one.Parts[0], p)))
                {
                    Assert.Equal(one.At(at).DistanceMm, other.At(at).DistanceMm, 1e-9);
                    Assert.InRange((one.At(at).Outward - other.At(at).Outward).Length, 0, 1e-9);
                }
            },
            iter: 200);

    /// <summary>All tubes begin at the first one's start, so that they meet.</summary>
    private static SmoothUnion Crossing(TubeSketch[] sketches, Func<TubeSketch, SweptTube> made, double blend) =>
        new(sketches.Select(s => made(s with { From = sketches[0].From })), blend);
}
