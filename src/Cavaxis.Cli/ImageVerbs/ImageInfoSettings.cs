using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image info</c> takes.</summary>
public sealed class ImageInfoSettings : CommandSettings
{
    /// <summary>Path of the image or folder.</summary>
    [CommandArgument(0, "<FILE|FOLDER>")]
    [Description("A DICOM image, or a folder of them.")]
    public required string ImagePath { get; init; }

    /// <summary>JSON instead of text.</summary>
    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }
}
