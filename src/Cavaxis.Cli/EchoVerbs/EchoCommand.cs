using System.Globalization;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Scenes;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Gif;
using Cavaxis.Reports.Png;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.EchoVerbs;

/// <summary><c>echo</c>: a synthetic ultrasound picture or loop of a scene.</summary>
/// <param name="output">Where results go.</param>
public sealed class EchoCommand(CommandOutput output) : Command<EchoSettings>
{
    private const int UsualLoop = 20;

    /// <inheritdoc/>
    public override int Execute(CommandContext context, EchoSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        List<InputFault> faults = [];
        bool isLoop = Path.GetExtension(settings.Out).Equals(".gif", StringComparison.OrdinalIgnoreCase);
        if (!isLoop && !Path.GetExtension(settings.Out).Equals(".png", StringComparison.OrdinalIgnoreCase))
        {
            faults.Add(new InputFault(
                FaultCode.BadOption, "--out", settings.Out.Length == 0 ? "(nothing)" : InputFault.Shown(settings.Out), "a file name ending in .png or .gif", "Choose one of the two formats by the ending."));
        }

        int count = isLoop ? UsualLoop : 1;
        if (settings.Frames is string given)
        {
            count = (int)PlanOptionsReader.Whole("--frames", given, 1, EchoLoop.MostFrames, faults);
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        SceneFile file = SceneFileReader.Read(InputFile.ReadAll(settings.ScenePath, SceneFileReader.LargestFileBytes), Path.GetFileName(settings.ScenePath));
        BuiltScene built = BuiltScene.Of(file, CatalogueLoader.Load(settings.Catalogues));
        IReadOnlyList<EchoFrame> frames = ProgressNote.Counted(
            output, "Rendering", count, told => EchoLoop.Frames(built.Scene, built.Plane, built.Probe, built.Display, built.Motion, count, told));
        Tell(settings.Json, Made(file, built, frames, Written(settings.Out, isLoop, frames, built.Motion)));
        return (int)ExitCode.Done;
    }

    private static List<string> Written(string path, bool isLoop, IReadOnlyList<EchoFrame> frames, SceneMotion motion)
    {
        if (isLoop)
        {
            InputFile.WriteWhole(path, GifWriter.Write([.. frames.Select(static f => f.Image)], motion.FramesPerSecond));
            return [path];
        }

        List<string> files = [];
        for (int i = 0; i < frames.Count; i++)
        {
            string name = frames.Count == 1
                ? path
                : Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(path)}-{i + 1:D3}{Path.GetExtension(path)}"));
            InputFile.WriteWhole(name, PngFrameWriter.Write(frames[i].Image));
            files.Add(name);
        }

        return files;
    }

    private static EchoMade Made(SceneFile file, BuiltScene built, IReadOnlyList<EchoFrame> frames, IReadOnlyList<string> files)
    {
        PictureGrid grid = frames[0].Grid;
        (double column, double row) = grid.Pixel(0, 0);
        double focus = built.Probe.FocusMm;
        return new EchoMade(
            file.Title ?? string.Empty, file.Invented, files, frames.Count, grid.Width, grid.Height, grid.MmPerPixel, column, row,
            built.Probe.AxialWidthMm, built.Probe.LateralWidthMm(focus), built.Probe.SliceWidthMm(focus), Planner.Caution);
    }

    private void Tell(bool json, EchoMade made)
    {
        if (json)
        {
            output.Json(made);
            return;
        }

        output.Line(made.Title.Length == 0 ? "Synthetic ultrasound" : $"Synthetic ultrasound: {made.Title}{(made.Invented ? " (invented)" : string.Empty)}");
        output.Wrapped("Written: ", made.Files.Count == 1 ? made.Files[0] : string.Create(CultureInfo.InvariantCulture, $"{made.Files[0]} to {made.Files[^1]}"));
        output.Wrapped("Picture: ", string.Create(
            CultureInfo.InvariantCulture,
            $"{made.Frames} {(made.Frames == 1 ? "frame" : "frames")} of {made.WidthPixels} × {made.HeightPixels} pixels, {made.MmPerPixel:F4} mm a pixel both ways; the probe's face is at column {made.FaceColumn:F1}, row {made.FaceRow:F1}."));
        output.Wrapped("Resolution at the focus (calculated, half amplitude): ", string.Create(
            CultureInfo.InvariantCulture, $"{made.AxialResolutionMm:F2} mm along the beam, {made.LateralResolutionMm:F2} mm across, slice {made.SliceThicknessMm:F2} mm thick."));
        output.Line();
        output.Wrapped(string.Empty, "A computed picture, for learning: no patient, and no measure of what a real machine shows.");
        output.Wrapped(string.Empty, made.Caution);
    }
}
