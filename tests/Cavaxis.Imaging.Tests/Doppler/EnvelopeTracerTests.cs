using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Doppler;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Tests.Samples;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Imaging.Tests.Doppler;

public sealed class EnvelopeTracerTests
{
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(4, true)]
    public void The_envelope_is_found_in_noise_past_a_dark_window_and_a_bright_modal_band(int seed, bool below)
    {
        SpectrumPicture picture = SpectrumPicture.Of(static t => 60 + (30 * Math.Sin(2 * Math.PI * t / 0.8)), seed, below);
        DopplerEnvelope envelope = EnvelopeTracer.Trace(picture.Frame, picture.Axes);
        Assert.Equal(below ? FlowSide.Below : FlowSide.Above, envelope.Side);
        double[] off = [.. envelope.SpeedsCmPerS.Select(static (v, i) => v - (60 + (30 * Math.Sin(2 * Math.PI * i * 0.01 / 0.8))))];
        Assert.InRange(Math.Sqrt(off.Average(static d => d * d)), 0, 2.5);
        Assert.InRange(off.Average(), -1.5, 1.5);
        Assert.False(envelope.ReachesEdge);
    }

    [Fact]
    public void A_half_sine_integrates_to_two_over_pi_of_peak_times_time()
    {
        // 0.30 s of flow every 0.80 s, peak 100 cm/s: 2/π × 100 × 0.30 = 19.1 cm.
        SpectrumPicture picture = SpectrumPicture.Of(static t => t % 0.8 < 0.3 ? 100 * Math.Sin(Math.PI * (t % 0.8) / 0.3) : 0, 11);
        FlowReading flow = Read(picture);
        double truth = 2 / Math.PI * 100 * 0.3;
        Assert.Equal(truth, flow.VelocityTimeIntegral.Value.Value, 0.04 * truth);
        Assert.InRange(truth, flow.VelocityTimeIntegral.Value.Low, flow.VelocityTimeIntegral.Value.High);
        Assert.Equal(100, flow.Peak.Value.Value, 4.0);
        Assert.Equal(75, flow.Rate!.Value.Value, 1.0);
        Assert.Equal(truth / 0.8, flow.Mean.Value.Value, 0.04 * truth / 0.8);
    }

    [Fact]
    public void A_triangle_integrates_to_half_of_peak_times_time()
    {
        SpectrumPicture picture = SpectrumPicture.Of(static t => Math.Max(0, 90 * (1 - (Math.Abs((t % 0.7) - 0.15) / 0.15))), 5, below: true);
        FlowReading flow = Read(picture);
        double truth = 0.5 * 90 * 0.3;
        Assert.Equal(truth, flow.VelocityTimeIntegral.Value.Value, 0.05 * truth);
        Assert.InRange(truth, flow.VelocityTimeIntegral.Value.Low, flow.VelocityTimeIntegral.Value.High);
        Assert.Equal(60 / 0.7, flow.Rate!.Value.Value, 1.5);
    }

    [Fact]
    public void A_mirrored_spectrum_gives_the_same_envelope_on_the_other_side() =>
        Gen.Int[0, 1_000_000].Sample(static seed =>
        {
            SpectrumPicture up = SpectrumPicture.Of(static t => 50 + (25 * Math.Sin(7 * t)), seed);
            byte[] mirrored = new byte[SpectrumPicture.Columns * SpectrumPicture.Rows];
            for (int y = 0; y < SpectrumPicture.Rows; y++)
            {
                up.Frame.Samples.Span.Slice(y * SpectrumPicture.Columns, SpectrumPicture.Columns).CopyTo(mirrored.AsSpan((SpectrumPicture.Rows - 1 - y) * SpectrumPicture.Columns));
            }

            CalibratedRegion region = Boxes.Spectrum(0, 0, SpectrumPicture.Columns - 1, SpectrumPicture.Rows - 1, SpectrumPicture.Rows - 1 - SpectrumPicture.Baseline);
            SpectralAxes axes = SpectralAxes.Of(RegionJudge.Judge(SpectrumPicture.Columns, SpectrumPicture.Rows, [region]).Regions[0]);
            DopplerEnvelope down = EnvelopeTracer.Trace(new ImageFrame(SpectrumPicture.Columns, SpectrumPicture.Rows, 1, mirrored), axes, FlowSide.Below);
            DopplerEnvelope straight = EnvelopeTracer.Trace(up.Frame, up.Axes, FlowSide.Above);
            Assert.All(straight.SpeedsCmPerS.Zip(down.SpeedsCmPerS), static pair => Assert.Equal(pair.First, pair.Second, 1e-9));
        }, iter: 20);

    [Fact]
    public void The_synthetic_file_has_its_stated_envelope_integral_and_rate()
    {
        if (SampleFolder.Path is null)
        {
            return;
        }

        // SOURCE.md: 20 + 15 sin(2π t/0.9) cm/s above the baseline, 10 ms a column, 1 cm/s a row.
        PlainFile file = new("us_synth", "synth_bmode_colour_pw.dcm");
        JudgedRegion spectrum = RegionJudge.Judge(file.Width, file.Height, file.Regions()).Regions.Single(static r => r.Measure == RegionMeasure.SpeedOverTime);
        DopplerEnvelope envelope = EnvelopeTracer.Trace(file.Frames()[0], SpectralAxes.Of(spectrum));
        Assert.Equal(190, envelope.Axes.BaselineRow, 1e-9);
        Assert.Equal(FlowSide.Above, envelope.Side);
        double[] off = [.. envelope.SpeedsCmPerS.Select((v, i) => v - (20 + (15 * Math.Sin(2 * Math.PI * (envelope.Axes.Left + i - 10) * 0.01 / 0.9))))];
        Assert.InRange(off.Max(Math.Abs), 0, 1.2);
        FlowReading flow = FlowMeasuring.Read(Boxes.Frame, envelope, BeatFinder.Find(envelope));
        Assert.Equal(2, flow.Beats);
        Assert.Equal(18, flow.VelocityTimeIntegral.Value.Value, 0.4);
        Assert.Equal(35, flow.Peak.Value.Value, 0.8);
        Assert.Equal(20, flow.Mean.Value.Value, 0.4);
        Assert.Equal(66.7, flow.Rate!.Value.Value, 0.8);
    }

    [Fact]
    public void Noise_alone_has_no_envelope()
    {
        SpectrumPicture picture = SpectrumPicture.Of(static _ => 0, 3);
        Assert.Equal(FaultCode.NotFound, Assert.Throws<InputFaultException>(() => EnvelopeTracer.Trace(picture.Frame, picture.Axes)).Faults[0].Code);
    }

    [Fact]
    public void A_spectrum_cut_at_its_edge_says_so()
    {
        SpectrumPicture picture = SpectrumPicture.Of(static t => t % 0.8 < 0.3 ? 150 * Math.Sin(Math.PI * (t % 0.8) / 0.3) : 0, 11);
        DopplerEnvelope envelope = EnvelopeTracer.Trace(picture.Frame, picture.Axes, FlowSide.Above);
        Assert.True(envelope.ReachesEdge);
        Assert.Contains(FlowMeasuring.Read(Boxes.Frame, envelope, BeatFinder.Find(envelope)).Peak.Remarks, static r => r.Contains("reaches the edge", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData(170, null)]
    public void A_spectrum_without_baseline_or_with_one_outside_is_refused(int? stated, double? byHand)
    {
        JudgedRegion region = RegionJudge.Judge(320, 240, [Boxes.Spectrum(0, 0, 319, 159, stated)]).Regions[0];
        Assert.Equal("baselineRow", Assert.Throws<InputFaultException>(() => SpectralAxes.Of(region, byHand)).Faults[0].Field);
    }

    [Fact]
    public void A_baseline_row_with_a_speed_of_its_own_moves_the_zero()
    {
        // The reference row reads 10 cm/s at 2 cm/s a row: zero lies five rows below it.
        JudgedRegion region = RegionJudge.Judge(320, 240, [Boxes.Spectrum(0, 20, 319, 159, 40, cmPerSPerRow: 2, baselineSpeed: 10)]).Regions[0];
        SpectralAxes axes = SpectralAxes.Of(region);
        Assert.Equal(65, axes.BaselineRow, 1e-12);
        Assert.Equal(10, axes.SpeedAt(60), 1e-12);
        Assert.Equal(62, SpectralAxes.Of(region, 62).BaselineRow, 1e-12);
    }

    private static FlowReading Read(SpectrumPicture picture)
    {
        DopplerEnvelope envelope = EnvelopeTracer.Trace(picture.Frame, picture.Axes);
        return FlowMeasuring.Read(Boxes.Frame, envelope, BeatFinder.Find(envelope));
    }
}
