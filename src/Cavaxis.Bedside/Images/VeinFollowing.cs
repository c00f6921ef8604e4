using System.Globalization;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>A vein followed through the loop of a file, forwards and backwards from the frame on which its walls were pointed at.</summary>
/// <param name="Diameters">The diameter on each frame where both walls were found, in the order of the frames.</param>
/// <param name="Breath">What they tell over the breath.</param>
/// <param name="Frames">Frames that were looked at.</param>
public sealed record VeinFollowing(IReadOnlyList<ImageMeasurement> Diameters, BreathVariation Breath, int Frames)
{
    /// <summary>Most samples of a loop that are held at once.</summary>
    private const long MostSamples = 400_000_000;

    /// <summary>Follows the two walls and reads the change.</summary>
    /// <param name="file">The file.</param>
    /// <param name="frameAt">Gives a frame, from 0.</param>
    /// <param name="start">Frame on which the points were placed, from 1.</param>
    /// <param name="from">On one wall.</param>
    /// <param name="to">On the other wall.</param>
    /// <param name="ruler">A ruler for each frame, from 1.</param>
    /// <param name="read">Told how many frames were read; null for nothing.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>Diameters and reading.</returns>
    /// <exception cref="InputFaultException">A loop too large, points that cannot be measured between, or walls on fewer than two frames.</exception>
    public static async Task<VeinFollowing> FollowAsync(
        DicomFile file, Func<int, CancellationToken, Task<ImageFrame>> frameAt, int start, PixelPoint from, PixelPoint to, Func<int, FrameRuler> ruler,
        Action<int>? read = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(frameAt);
        ArgumentNullException.ThrowIfNull(ruler);
        long samples = (long)file.Header.Columns * file.Header.Rows * file.Header.Samples * file.FrameCount;
        _ = Require.InRange(samples, 0, MostSamples, "loop.samples", "Export a shorter or smaller loop.");

        // What is wrong with the points is said before the loop is read.
        _ = ruler(start).Distance(from, to);
        List<ImageFrame> frames = [];
        for (int i = 0; i < file.FrameCount; i++)
        {
            frames.Add(await frameAt(i, cancel));
            read?.Invoke(frames.Count);
        }

        List<ImageMeasurement> diameters = await Task.Run(() => Walled(frames, start, from, to, ruler), cancel);
        if (diameters.Count < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotFound, "walls", string.Create(CultureInfo.InvariantCulture, $"{diameters.Count} of {frames.Count} frames"), "walls of a dark vein on two frames or more",
                "Place the points across a dark vein, or measure single frames by their distance."));
        }

        double? seconds = file.Header.FrameTimeMs is double ms ? (frames.Count - 1) * ms / 1000 : null;
        return new VeinFollowing(diameters, BreathReading.Of(diameters, seconds), frames.Count);
    }

    private static List<ImageMeasurement> Walled(List<ImageFrame> frames, int start, PixelPoint from, PixelPoint to, Func<int, FrameRuler> ruler)
    {
        IReadOnlyList<(PixelPoint From, PixelPoint To)?> on = DiameterFollower.Follow(frames[(start - 1)..], from, to);
        IReadOnlyList<(PixelPoint From, PixelPoint To)?> back = DiameterFollower.Follow([.. frames[..start].AsEnumerable().Reverse()], from, to);
        List<ImageMeasurement> found = [];
        for (int frame = 1; frame <= frames.Count; frame++)
        {
            if ((frame >= start ? on[frame - start] : back[start - frame]) is (PixelPoint one, PixelPoint other))
            {
                found.Add(ruler(frame).Distance(one, other));
            }
        }

        return found;
    }
}
