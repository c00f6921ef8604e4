using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>The verbs of images.</summary>
internal static class ImageVerbTable
{
    /// <summary>Adds them to the command line.</summary>
    /// <param name="configuration">The command line.</param>
    public static void AddTo(IConfigurator configuration) => configuration.AddBranch("image", static branch =>
    {
        branch.SetDescription("Images: what they are, and what is measured on them.");
        branch.AddCommand<ImageMeasureCommand>("measure")
            .WithDescription("Measure on a frame: distance, course, area, angle, a vein over the breath, Doppler flow.")
            .WithExample("image", "measure", "echo.dcm", "--distance", "120,88", "120,156")
            .WithExample("image", "measure", "loop.dcm", "--vti", "--lvot-mm", "21");
    });
}
