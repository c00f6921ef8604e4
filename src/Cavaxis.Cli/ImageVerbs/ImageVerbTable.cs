using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>The verbs of images.</summary>
internal static class ImageVerbTable
{
    /// <summary>Adds them to the command line.</summary>
    /// <param name="configuration">The command line.</param>
    /// <param name="name">Name of the branch.</param>
    public static void AddTo(IConfigurator configuration, string name) => configuration.AddBranch(name, static branch =>
    {
        branch.SetDescription("Ultrasound and tomography: what a file is, files without who it was, and what is measured.");
        branch.AddCommand<ImageInfoCommand>("info").WithDescription("Show what an image or a folder of slices is, its calibration, and what to beware of.");
        branch.AddCommand<ImageCleanCommand>("clean").WithDescription("Write images anew without who it was (DICOM basic profile), with burnt-in text masked on request.");
        branch.AddCommand<ImageMeasureCommand>("measure")
            .WithDescription("Measure on a frame: distance, course, area, angle, a vein over the breath, Doppler flow.")
            .WithExample("image", "measure", "echo.dcm", "--distance", "120,88", "120,156")
            .WithExample("image", "measure", "loop.dcm", "--vti", "--lvot-mm", "21");
        branch.AddCommand<ImageAxisCommand>("axis")
            .WithDescription("Trace the caval veins in a folder of slices: centreline, diameters, junctions, angles; the case with them.")
            .WithExample("image", "axis", "slices", "--seed", "-31,148,-506", "--seed", "-27,168,-666", "--pictures", "look", "--case", "case.json", "--out", "new.json");
        branch.AddCommand<ImageTipCommand>("tip")
            .WithDescription("Tell where the tip lies from a part of the device that was seen.")
            .WithExample("image", "tip", "case.json", "--device", "bicaval-27fr-29cm", "--seen", "return port", "--landmark", "scaj", "--side", "feet", "--distance-mm", "25", "--entry", "rightNeck");
    });
}
