using Cavaxis.Imaging.Echo;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Tests.Echo;

public class PointTargetTests
{
    // Time of flight at 1540 m/s: an echo from depth d comes after 2d/1540 and is drawn at half its way.
    [Theory]
    [InlineData(ProbeKind.Linear, 8)]
    [InlineData(ProbeKind.Linear, 21.37)]
    [InlineData(ProbeKind.Linear, 30)]
    [InlineData(ProbeKind.Linear, 44.9)]
    [InlineData(ProbeKind.Convex, 33.3)]
    [InlineData(ProbeKind.Convex, 88)]
    [InlineData(ProbeKind.Phased, 47.7)]
    public void A_point_appears_at_its_depth_to_a_fifth_of_a_pixel(ProbeKind kind, double depth)
    {
        Probe probe = kind switch { ProbeKind.Linear => EchoBench.Linear(), ProbeKind.Convex => EchoBench.Convex(), _ => EchoBench.Phased() };
        EchoFrame frame = EchoRenderer.Render(EchoBench.Points((0, depth)), EchoBench.Plane, probe, EchoBench.Quiet);
        double[] line = EchoBench.Middle(frame);
        double found = EchoBench.Peak(line, 1, line.Length - 1) * frame.Beams.SampleMm;
        Assert.InRange(found - depth, -0.2 * frame.Grid.MmPerPixel, 0.2 * frame.Grid.MmPerPixel);
        (double x, double y) = Centre(frame);
        (double right, double down) = frame.Grid.Within(x, y);
        Assert.InRange(right, -0.2 * frame.Grid.MmPerPixel, 0.2 * frame.Grid.MmPerPixel);
        Assert.InRange(down - depth, -0.3 * frame.Grid.MmPerPixel, 0.3 * frame.Grid.MmPerPixel);
    }

    [Fact]
    public void A_length_read_by_the_calibration_is_the_length_in_the_scene()
    {
        EchoFrame one = EchoRenderer.Render(EchoBench.Points((-9.3, 18)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        EchoFrame other = EchoRenderer.Render(EchoBench.Points((8.1, 41)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        CalibratedRegion region = one.Region;
        Assert.Equal((RegionUnit.Centimetre, RegionUnit.Centimetre, RegionFormat.TwoDimensional), (region.UnitX, region.UnitY, region.Format));
        Assert.Equal((one.Image.Width - 1, one.Image.Height - 1), (region.Right, region.Bottom));
        (double x1, double y1) = Centre(one);
        (double x2, double y2) = Centre(other);
        double length = 10 * Math.Sqrt(Math.Pow((x2 - x1) * region.StepX, 2) + Math.Pow((y2 - y1) * region.StepY, 2));
        Assert.InRange(length - Math.Sqrt((17.4 * 17.4) + (23 * 23)), -0.1, 0.1);
        double depth = 10 * (((y2 - region.ReferenceY!.Value) * region.StepY) + region.ReferenceValueY!.Value);
        Assert.InRange(depth - 41, -0.1, 0.1);
    }

    // A Gaussian pulse of bandwidth B at half amplitude: 4 ln 2 / (π B) long at half amplitude, c/2 times that in depth (closed form).
    [Theory]
    [InlineData(3, 0.6)]
    [InlineData(5, 0.6)]
    [InlineData(8, 0.4)]
    public void A_point_is_as_long_as_the_pulse(double frequency, double bandwidth)
    {
        Probe probe = new(ProbeKind.Linear, frequency, 50, 30, 12, widthMm: 20, bandwidth: bandwidth);
        EchoFrame frame = EchoRenderer.Render(EchoBench.Points((0, 30)), EchoBench.Plane, probe, EchoBench.Quiet);
        double width = EchoBench.WidthAtHalf(EchoBench.Middle(frame)) * frame.Beams.SampleMm;
        double theory = 1.540 / 2 * 4 * Math.Log(2) / (Math.PI * bandwidth * frequency);
        Assert.InRange(width / theory, 0.98, 1.03);
        Assert.Equal(theory, probe.AxialWidthMm, 9);
    }

    // A rectangular aperture at its focus, there and back: sinc²(x D/(λ z)), half at ±0.443 λ z/D (textbook; Fourier transform of the aperture).
    [Theory]
    [InlineData(5, 30)]
    [InlineData(3, 40)]
    [InlineData(7, 25)]
    public void A_point_at_the_focus_is_as_wide_as_the_aperture_says(double frequency, double depth)
    {
        Probe probe = EchoBench.Linear(frequency, 60, depth);
        EchoFrame frame = EchoRenderer.Render(EchoBench.Points((0, depth)), EchoBench.Plane, probe, EchoBench.Quiet);
        double[] across = Across(frame, depth);
        double width = EchoBench.WidthAtHalf(across) * 30 / (frame.Beams.Lines - 1);
        Assert.InRange(width / (0.8859 * 1.540 / frequency * depth / 12), 0.98, 1.06);
    }

    [Fact]
    public void A_point_away_from_the_focus_is_wider()
    {
        double near = EchoBench.WidthAtHalf(Across(EchoRenderer.Render(EchoBench.Points((0, 30)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet), 30));
        double far = EchoBench.WidthAtHalf(Across(EchoRenderer.Render(EchoBench.Points((0, 48)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet), 48));
        Assert.True(far > 1.3 * near);
    }

    // The first side lobe of sinc is −13.26 dB; there and back that is −26.5 dB. Lines a quarter of the beam apart may miss its top by a decibel.
    [Fact]
    public void The_first_side_lobe_is_26_and_a_half_decibels_down()
    {
        EchoFrame frame = EchoRenderer.Render(EchoBench.Points((0, 30)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        double[] across = Across(frame, 30);
        int middle = frame.Beams.Lines / 2;
        double pitch = 30.0 / (frame.Beams.Lines - 1);
        double unit = 1.540 / 5 * 30 / 12;
        double lobe = Enumerable.Range(middle, across.Length - middle).Where(i => (i - middle) * pitch > 1.05 * unit && (i - middle) * pitch < 1.95 * unit).Max(i => across[i]);
        Assert.InRange(20 * Math.Log10(lobe / across[middle]), -28, -25.5);
    }

    // Half wavelengths apart, so that the two add in phase; Gaussians part where they are 0.85 widths (two deviations) apart.
    [Theory]
    [InlineData(2, true)]
    [InlineData(1, false)]
    public void Two_points_one_behind_the_other_part_beyond_the_length_of_the_pulse(int halfWaves, bool apart)
    {
        double gap = halfWaves * 1.540 / 5 / 2;
        EchoFrame frame = EchoRenderer.Render(EchoBench.Points((0, 30), (0, 30 + gap)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        double[] line = EchoBench.Middle(frame);
        Assert.Equal(apart, line[At(30 + (gap / 2))] < 0.95 * Math.Min(line[At(30)], line[At(30 + gap)]));
        int At(double depth) => (int)Math.Round(depth / frame.Beams.SampleMm);
    }

    [Theory]
    [InlineData(1.4, true)]
    [InlineData(0.6, false)]
    public void Two_points_side_by_side_part_beyond_the_width_of_the_beam(double widths, bool apart)
    {
        double gap = widths * EchoBench.Linear().LateralWidthMm(30);
        EchoFrame frame = EchoRenderer.Render(EchoBench.Points((-gap / 2, 30), (gap / 2, 30)), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        double[] across = Across(frame, 30);
        int middle = frame.Beams.Lines / 2;
        int aside = (int)Math.Round(gap / 2 / (30.0 / (frame.Beams.Lines - 1)));
        Assert.Equal(apart, across[middle] < 0.9 * across[middle + aside]);
    }

    private static double[] Across(EchoFrame frame, double depth)
    {
        int sample = (int)Math.Round(depth / frame.Beams.SampleMm);
        return [.. Enumerable.Range(0, frame.Beams.Lines).Select(l => frame.Beams.At(l, sample))];
    }

    private static (double X, double Y) Centre(EchoFrame frame)
    {
        double sum = 0;
        double sumX = 0;
        double sumY = 0;
        for (int y = 0; y < frame.Image.Height; y++)
        {
            for (int x = 0; x < frame.Image.Width; x++)
            {
                // Above side lobes, so that those at the picture's edge cannot pull.
                double bright = Math.Max(0, frame.Image.Brightness(x, y) - 110);
                sum += bright;
                sumX += bright * x;
                sumY += bright * y;
            }
        }

        return (sumX / sum, sumY / sum);
    }
}
