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
        branch.SetDescription("Ultrasound and tomography: what a file is, and files without who it was.");
        branch.AddCommand<ImageInfoCommand>("info").WithDescription("Show what an image or a folder of slices is, its calibration, and what to beware of.");
        branch.AddCommand<ImageCleanCommand>("clean").WithDescription("Write images anew without who it was (DICOM basic profile), with burnt-in text masked on request.");
    });
}
