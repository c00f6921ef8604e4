using Cavaxis.Anatomy.Space;
using Cavaxis.Web.Pages.Images;
using Cavaxis.Web.Pointing;
using CsCheck;

namespace Cavaxis.Web.Tests.Images;

public sealed class PlaneViewTests
{
    private static readonly Gen<Vector3D> Places = Gen.Select(Gen.Double[-200, 200], Gen.Double[-200, 200], Gen.Double[-900, 900], static (x, y, z) => new Vector3D(x, y, z));

    [Fact]
    public void A_point_of_a_plane_is_seen_again_where_it_was_pointed_at() =>
        Gen.Select(Gen.Int[0, 2], Places, Gen.Double[0, PlaneView.Size], Gen.Double[0, PlaneView.Size]).Sample((which, through, x, y) =>
        {
            PlaneView view = PlaneView.All[which];
            PicturePoint? again = view.Of(through, view.At(through, new PicturePoint(x, y)));
            Assert.NotNull(again);
            Assert.Equal(x, again.Value.X, 1e-6);
            Assert.Equal(y, again.Value.Y, 1e-6);
        });

    [Theory]
    [InlineData("axial", 1, 0, 0, 1, 0)]
    [InlineData("axial", 0, 1, 0, 0, 1)]
    [InlineData("coronal", 1, 0, 0, 1, 0)]
    [InlineData("coronal", 0, 0, 1, 0, -1)]
    [InlineData("sagittal", 0, 1, 0, 1, 0)]
    [InlineData("sagittal", 0, 0, 1, 0, -1)]
    public void The_patients_left_back_and_head_lie_where_the_caption_says(string key, double x, double y, double z, int right, int down)
    {
        PicturePoint at = PlaneView.All.Single(v => v.Key == key).Of(Vector3D.Zero, 10 * new Vector3D(x, y, z))!.Value;
        Assert.Equal(PlaneView.Middle.X + (right * 10 / PlaneView.PixelMm), at.X, 1e-9);
        Assert.Equal(PlaneView.Middle.Y + (down * 10 / PlaneView.PixelMm), at.Y, 1e-9);
    }

    [Fact]
    public void What_lies_farther_than_three_millimetres_from_the_plane_is_not_shown_in_it()
    {
        Assert.NotNull(PlaneView.All[0].Of(Vector3D.Zero, new Vector3D(0, 0, 2.9)));
        Assert.Null(PlaneView.All[0].Of(Vector3D.Zero, new Vector3D(0, 0, 3.1)));
    }
}
