using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Doppler;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Pointing;

namespace Cavaxis.Web.Pages.Images;

/// <summary>What someone has pointed at in an image, and what follows from it. Nothing is measured that the calibration does not carry.</summary>
internal sealed class ImageWork
{
    private readonly string fileSha256;
    private readonly List<PicturePoint> points = [];
    private readonly List<PicturePoint> knownEnds = [];

    /// <summary>Nothing pointed at yet.</summary>
    /// <param name="fileSha256">SHA-256 of the file.</param>
    /// <param name="width">Columns of a frame.</param>
    /// <param name="height">Rows.</param>
    /// <param name="regions">Calibrated regions as the file states them.</param>
    public ImageWork(string fileSha256, int width, int height, IReadOnlyList<CalibratedRegion> regions)
    {
        this.fileSha256 = fileSha256;
        Calibration = RegionJudge.Judge(width, height, regions);
        Tool = Calibration.Regions.Any(static r => r is { IsUsable: true, Measure: RegionMeasure.Length }) ? MeasureTool.Distance : MeasureTool.KnownLength;
    }

    /// <summary>The regions, judged.</summary>
    public FrameCalibration Calibration { get; private set; }

    /// <summary>What is being measured.</summary>
    public MeasureTool Tool { get; private set; }

    /// <summary>Number of the frame, from 1.</summary>
    public int Frame { get; private set; } = 1;

    /// <summary>The points of the tool in hand.</summary>
    public IReadOnlyList<PicturePoint> Points => Tool == MeasureTool.KnownLength ? knownEnds : points;

    /// <summary>The known length, mm; null where none is given.</summary>
    public double? KnownMm { get; private set; }

    /// <summary>The diameter of the outflow tract that was measured before; null for none.</summary>
    public ImageMeasurement? Outflow { get; private set; }

    /// <summary>True where a spectrum can be measured in.</summary>
    public bool HasSpectrum => Spectrum is not null;

    /// <summary>True where the known length takes the place of the calibration of the file.</summary>
    public bool IsByKnownLength => Known is not null;

    private JudgedRegion? Spectrum => Calibration.Regions.FirstOrDefault(static r => r is { IsUsable: true, Measure: RegionMeasure.SpeedOverTime });

    private KnownLength? Known => KnownMm is double mm && knownEnds is [PicturePoint from, PicturePoint to]
        ? new KnownLength(mm, 0.01 * mm, Pixel(from), Pixel(to), "a length given by whoever measured")
        : null;

    /// <summary>Takes another tool; the points of the one before go.</summary>
    public void Take(MeasureTool tool)
    {
        Tool = tool;
        points.Clear();
    }

    /// <summary>Turns to another frame; the points stay where they are.</summary>
    public void Turn(int frame) => Frame = frame;

    /// <summary>Sets a point. One too many begins anew.</summary>
    public void Put(PicturePoint point)
    {
        List<PicturePoint> set = Tool == MeasureTool.KnownLength ? knownEnds : points;
        int most = Tool switch { MeasureTool.Distance or MeasureTool.Breath or MeasureTool.KnownLength => 2, MeasureTool.Angle => 3, _ => FrameRuler.MostPoints };
        if (set.Count >= most)
        {
            set.Clear();
        }

        set.Add(point);
    }

    /// <summary>Moves a point.</summary>
    public void Move(int index, PicturePoint to) => (Tool == MeasureTool.KnownLength ? knownEnds : points)[index] = to;

    /// <summary>Takes the last point back.</summary>
    public void Undo()
    {
        List<PicturePoint> set = Tool == MeasureTool.KnownLength ? knownEnds : points;
        if (set.Count > 0)
        {
            set.RemoveAt(set.Count - 1);
        }
    }

    /// <summary>Gives the known length, mm; null takes it away and the file's calibration counts again.</summary>
    public void Know(double? mm) => KnownMm = mm;

    /// <summary>Decides by how much the image was shrunk since a region was written.</summary>
    /// <exception cref="InputFaultException">The number cannot be.</exception>
    public void Confirm(int region, double shrink) => Calibration = Calibration.Confirm(region, shrink);

    /// <summary>Keeps a distance as the diameter of the outflow tract.</summary>
    public void UseAsOutflow(ImageMeasurement distance) => Outflow = distance;

    /// <summary>Measures on a frame, from 1.</summary>
    public FrameRuler Ruler(int frame) => new(new FrameIdentity(fileSha256, frame), Calibration, null, Known);

    /// <summary>A place of the picture as the engine counts it: from the middle of the first pixel.</summary>
    public static PixelPoint Pixel(PicturePoint point) => new(point.X - 0.5, point.Y - 0.5);

    /// <summary>The same back again.</summary>
    public static PicturePoint Place(PixelPoint point) => new(point.X + 0.5, point.Y + 0.5);

    /// <summary>Measures with the points set so far.</summary>
    /// <param name="frame">The frame shown, for a spectrum; null where it is not at hand.</param>
    /// <returns>What follows from them.</returns>
    public MeasureOutcome Measure(ImageFrame? frame)
    {
        try
        {
            PixelPoint[] at = [.. points.Select(Pixel)];
            return (Tool, at.Length) switch
            {
                (MeasureTool.Distance, 2) => new([Ruler(Frame).Distance(at[0], at[1])]),
                (MeasureTool.Course, >= 2) => new([Ruler(Frame).Course(at)]),
                (MeasureTool.Area, >= 3) => new([Ruler(Frame).Area(at)]),
                (MeasureTool.Angle, 3) => new([Ruler(Frame).Angle(at[0], at[1], at[2])]),
                (MeasureTool.Spectrum, _) when frame is not null && Spectrum is JudgedRegion region => OfSpectrum(frame, region, at),
                _ => MeasureOutcome.Nothing,
            };
        }
        catch (InputFaultException fault)
        {
            return MeasureOutcome.Nothing with { Faults = fault.Faults };
        }
    }

    private MeasureOutcome OfSpectrum(ImageFrame frame, JudgedRegion region, PixelPoint[] at)
    {
        DopplerEnvelope envelope = EnvelopeTracer.Trace(frame, SpectralAxes.Of(region));
        if (at.Length >= 2)
        {
            envelope = envelope.Correct([.. at.OrderBy(static p => p.X)]);
        }

        IReadOnlyList<PicturePoint> line = [.. envelope.OnImage().Select(Place)];
        IReadOnlyList<BeatWindow> beats = BeatFinder.Find(envelope);
        if (beats.Count == 0)
        {
            return new([], line, ["No whole beat is seen between two rises of the speed: nothing is integrated."]);
        }

        FlowReading flow = FlowMeasuring.Read(new FrameIdentity(fileSha256, Frame), envelope, beats);
        List<ImageMeasurement> all = [flow.VelocityTimeIntegral, flow.Peak, flow.Mean];
        if (flow.Rate is ImageMeasurement rate)
        {
            all.Add(rate);
        }

        if (Outflow is ImageMeasurement diameter)
        {
            ImageMeasurement volume = StrokeVolumes.Of(flow.VelocityTimeIntegral, diameter);
            all.Add(volume);
            if (flow.Rate is ImageMeasurement beating)
            {
                all.Add(StrokeVolumes.Output(volume, beating));
            }
        }

        return new(all, line, [string.Create(CultureInfo.InvariantCulture, $"{flow.Beats} whole beats; {100 * envelope.CorrectedShare:F0} % of the envelope drawn by hand.{(envelope.ReachesEdge ? " The trace touches the edge of the spectrum: it is cut there or wraps to the other side." : string.Empty)}")]);
    }
}
