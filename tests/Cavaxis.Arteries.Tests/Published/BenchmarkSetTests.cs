using System.Globalization;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Tests.References;
using Xunit.Abstractions;

namespace Cavaxis.Arteries.Tests.Published;

public class BenchmarkSetTests(ITestOutputHelper output)
{
    private const double CellLength = 0.0025;

    // Times the finite-volume run's own distance from the three-dimensional reference, measured the same way (issue 8).
    private const double MostTimesOwnDistance = 1.5;

    [Fact]
    public void The_common_carotid_is_the_published_one() => Compare(
        PublishedCase.Carotid, 13.770, new("carotid", 0.063), ("FV_carotid_lastcycle.csv", "B3D_commoncarotid.txt"));

    [Fact]
    public void The_thoracic_aorta_is_the_published_one() => Compare(
        PublishedCase.ThoracicAorta, 12.723, new("aorta", 0.120685), ("FV_aortic_lastcycle.csv", "B3D_aortic.txt"));

    [Fact]
    public void The_aorta_above_the_bifurcation_is_the_published_one() => Compare(
        PublishedCase.Bifurcation, 12.654, new("aorta", 0.043), ("FV_aorta-bif_lastcycle.csv", "B3D_AortaMid.txt"));

    [Fact]
    public void The_bifurcation_is_the_published_one() => Compare(
        PublishedCase.Bifurcation, 12.654, new("aorta", 0.086), ("FV_aorta_bif-bif_lastcycle.csv", "B3D_Junction.txt"));

    [Fact]
    public void The_iliac_artery_is_the_published_one() => Compare(
        PublishedCase.Bifurcation, 12.654, new("left", 0.0425), ("FV_iliac-bif_lastcycle.csv", "B3D_IliacMid.txt"));

    private void Compare(PublishedCase published, double meanAtTheEnd, NetworkPlace place, (string FiniteVolume, string ThreeDimensions) files)
    {
        if (ReferenceData.IsMissing)
        {
            return;
        }

        double[][] volumes = ReferenceData.Rows(Path.Combine("boileau2015-derived", files.FiniteVolume), ',');
        double[][] space = [.. ReferenceData.Rows(Path.Combine("boileau2015-reference", files.ThreeDimensions), ' ').Take(volumes.Length)];
        (double[] pressure, double[] flow) = published.Curves(CellLength, place)[0];
        double p = PeriodicCurves.RelativePercent(pressure, Column(volumes, 1));
        double q = PeriodicCurves.PercentOfLargest(flow, Column(volumes, 2));
        double pSpace = PeriodicCurves.RelativePercent(pressure, Column(space, 1));
        double qSpace = PeriodicCurves.PercentOfLargest(flow, Column(space, 2));
        double pOwn = PeriodicCurves.RelativePercent(Column(volumes, 1), Column(space, 1));
        double qOwn = PeriodicCurves.PercentOfLargest(Column(volumes, 2), Column(space, 2));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{place.Segment}: from finite volumes P {p:F3} % Q {q:F3} %; from 3-D P {pSpace:F3} % (theirs {pOwn:F3}) Q {qSpace:F3} % (theirs {qOwn:F3}); mean {pressure.Average():F4} kPa"));
        Assert.InRange(p, 0, 0.5);
        Assert.InRange(q, 0, 1);
        Assert.InRange(pSpace, 0, MostTimesOwnDistance * pOwn);
        Assert.InRange(qSpace, 0, MostTimesOwnDistance * qOwn);
        Assert.InRange(pressure.Average(), 0.99 * meanAtTheEnd, 1.01 * meanAtTheEnd);
    }

    private static double[] Column(double[][] rows, int column) => [.. rows.Select(r => r[column])];
}
