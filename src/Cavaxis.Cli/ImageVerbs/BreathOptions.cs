using System.Globalization;
using Cavaxis.Bedside.Images;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Follows a vein through the loop of a file.</summary>
internal static class BreathOptions
{
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

        VeinFollowing followed = await VeinFollowing.FollowAsync(file, (i, c) => reader.FrameAsync(file, i, c), start, points[0], points[1], ruler, cancel: cancel);
        return (followed.Diameters, followed.Breath);
    }
}
