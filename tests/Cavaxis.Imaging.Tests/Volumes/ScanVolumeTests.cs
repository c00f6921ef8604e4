using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Imaging.Tests.Volumes;

public sealed class ScanVolumeTests
{
    private static readonly Gen<Vector3D> Vectors = Gen.Select(Gen.Double[-300, 300], Gen.Double[-300, 300], Gen.Double[-300, 300], static (x, y, z) => new Vector3D(x, y, z));

    [Fact]
    public void A_voxel_is_found_again_from_its_place_whatever_way_the_slices_lie() =>
        Gen.Select(Vectors, Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[0, 5]).Sample((origin, turn, tilt, at) =>
        {
            Vector3D along = new(Math.Cos(turn), Math.Sin(turn), 0);
            Vector3D down = new(-Math.Sin(turn) * Math.Cos(tilt), Math.Cos(turn) * Math.Cos(tilt), Math.Sin(tilt));
            ScanVolume volume = new(2, 3, 4, new short[24], origin, 0.7 * along, 0.8 * down, 1.5 * along.Cross(down));
            (double i, double j, double k) = volume.Voxel(volume.Place(at, at + 1, at + 2));
            Assert.Equal(at, i, 1e-9);
            Assert.Equal(at + 1, j, 1e-9);
            Assert.Equal(at + 2, k, 1e-9);
        });

    [Fact]
    public void Columns_run_fastest_then_rows_then_slices()
    {
        ScanVolume volume = Of([.. Enumerable.Range(0, 24).Select(static n => (short)n)]);
        Assert.Equal((0, 1, 2, 6), (volume[0, 0, 0], volume[1, 0, 0], volume[0, 1, 0], volume[0, 0, 1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => volume[2, 0, 0]);
    }

    [Fact]
    public void Values_that_do_not_fill_the_volume_and_steps_in_one_plane_are_refused()
    {
        Assert.Equal("volume.values", Assert.Throws<InputFaultException>(() => Of(new short[23])).Faults[0].Field);
        Assert.Equal(
            "volume.voxelMm3",
            Assert.Throws<InputFaultException>(() => new ScanVolume(2, 3, 4, new short[24], Vector3D.Zero, new(1, 0, 0), new(0, 1, 0), new(1, 1, 0))).Faults[0].Field);
    }

    private static ScanVolume Of(short[] values) => new(2, 3, 4, values, Vector3D.Zero, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));
}
