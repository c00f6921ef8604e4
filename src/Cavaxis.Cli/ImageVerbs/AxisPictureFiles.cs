using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Cli.Commands;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Planning.Json;
using Cavaxis.Reports.Png;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Pictures by which a person judges a line through a scan.</summary>
internal static class AxisPictureFiles
{
    private const double EveryMm = 10;

    /// <summary>Writes them.</summary>
    /// <param name="folder">The folder; made where there is none.</param>
    /// <param name="scan">The scan.</param>
    /// <param name="trace">What was found; with a failure, the way is drawn without a wall.</param>
    /// <returns>Names of the files.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">They cannot be written.</exception>
    public static IReadOnlyList<string> Write(string folder, ScanVolume scan, AxisTrace trace)
    {
        if (trace.Course is not SpaceCurve course)
        {
            return [];
        }

        TracedAxis shown = trace.Axis ?? new TracedAxis(course, [], [], double.NaN, null);
        try
        {
            _ = Directory.CreateDirectory(folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw OptionNumbers.Refused("--pictures", folder, "a folder you may write to", "Name another folder.");
        }

        GreyWindow window = GreyWindow.ForBlood(trace.Quality?.WayHu ?? 50);
        List<string> names = [];
        void Add(string name, ImageFrame frame)
        {
            InputFile.WriteWhole(Path.Combine(folder, name), PngFrameWriter.Write(frame));
            names.Add(name);
        }

        Vector3D middle = shown.Line.At(shown.Line.LengthMm / 2);
        double width = Math.Clamp(shown.Line.LengthMm + 40, 120, 500);
        Add("coronal.png", AxisPictures.Plane(scan, ViewPlane.Coronal, middle, window, shown, width));
        Add("sagittal.png", AxisPictures.Plane(scan, ViewPlane.Sagittal, middle, window, shown, width));
        Add("straight-left-right.png", AxisPictures.Straightened(scan, shown, window, 0));
        Add("straight-front-back.png", AxisPictures.Straightened(scan, shown, window, 90));
        for (double arc = 0; arc <= shown.Line.LengthMm; arc += EveryMm)
        {
            Add(string.Create(CultureInfo.InvariantCulture, $"axial-{arc:000}mm.png"), AxisPictures.Plane(scan, ViewPlane.Axial, shown.Line.At(arc), window, shown, 120, 0.4));
        }

        foreach (AxisLandmark landmark in shown.Landmarks.Where(static l => l.IsThere))
        {
            Add($"axial-{JsonName.Of(landmark.Landmark.ToString())}.png", AxisPictures.Plane(scan, ViewPlane.Axial, landmark.Place, window, shown, 120, 0.4));
        }

        return names;
    }
}
