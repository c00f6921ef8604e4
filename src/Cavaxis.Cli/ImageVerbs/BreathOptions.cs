using System.Globalization;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Follows a vein through the loop of a file.</summary>
internal static class BreathOptions
{
    /// <summary>Most pixels of a loop that are held at once.</summary>
    private const long MostSamples = 400_000_000;

    /// <summary>Follows the two walls and reads the change.</summary>
    /// <param name="reader">Reads frames.</param>
    /// <param name="file">The file.</param>
    /// <param name="start">Frame on which the points were placed, from 1.</param>
    /// <param name="points">The two points.</param>
    /// <param name="ruler">A ruler for each frame.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>Diameters and reading.</returns>
    /// <exception cref="InputFaultException">Not two points, one frame, a loop too large, or walls on fewer than two frames.</exception>
    public static async Task<(IReadOnlyList<ImageMeasurement> Diameters, BreathVariation Breath)> FollowAsync(
        DicomReader reader, DicomFile file, int start, PixelPoint[] points, Func<int, FrameRuler> ruler, CancellationToken cancel)
    {
        if (points.Length != 2)
        {
            throw OptionNumbers.Refused("POINTS", string.Create(CultureInfo.InvariantCulture, $"{points.Length} points"), "two points, one on each wall", "Place them across the vein on the frame of --frame.");
        }

        long samples = (long)file.Header.Columns * file.Header.Rows * file.Header.Samples * file.FrameCount;
        _ = Require.InRange(samples, 0, MostSamples, "loop.samples", "Export a shorter or smaller loop.");
        List<ImageFrame> frames = [];
        for (int i = 0; i < file.FrameCount; i++)
        {
            frames.Add(await reader.FrameAsync(file, i, cancel).ConfigureAwait(false));
        }

        // Forwards and backwards from where the points were placed.
        _ = ruler(start).Distance(points[0], points[1]);
        IReadOnlyList<(PixelPoint From, PixelPoint To)?> on = DiameterFollower.Follow(frames[(start - 1)..], points[0], points[1]);
        IReadOnlyList<(PixelPoint From, PixelPoint To)?> back = DiameterFollower.Follow([.. frames[..start].AsEnumerable().Reverse()], points[0], points[1]);
        List<ImageMeasurement> diameters = [];
        for (int frame = 1; frame <= frames.Count; frame++)
        {
            if ((frame >= start ? on[frame - start] : back[start - frame]) is (PixelPoint from, PixelPoint to))
            {
                diameters.Add(ruler(frame).Distance(from, to));
            }
        }

        if (diameters.Count < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotFound, "walls", string.Create(CultureInfo.InvariantCulture, $"{diameters.Count} of {frames.Count} frames"), "walls of a dark vein on two frames or more", "Place the points across a dark vein, or measure single frames by --distance."));
        }

        double? seconds = file.Header.FrameTimeMs is double ms ? (frames.Count - 1) * ms / 1000 : null;
        return (diameters, BreathReading.Of(diameters, seconds));
    }
}
