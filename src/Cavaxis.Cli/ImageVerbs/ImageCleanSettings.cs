using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image clean</c> takes.</summary>
public sealed class ImageCleanSettings : CommandSettings
{
    /// <summary>Path of the image or folder.</summary>
    [CommandArgument(0, "<FILE|FOLDER>")]
    [Description("A DICOM image, or a folder of them.")]
    public required string ImagePath { get; init; }

    /// <summary>Where to.</summary>
    [CommandOption("--out <PATH>")]
    [Description("The new file; for a folder a new folder, in which files get numbers for names. Nothing is written over.")]
    public string? Out { get; init; }

    /// <summary>What is blackened.</summary>
    [CommandOption("--mask <WHERE>")]
    [Description("Blacken pixels of every frame: left,top,width,height in pixels, or outside-regions for all outside the calibrated regions.")]
    public string? Mask { get; init; }

    /// <summary>File of the key.</summary>
    [CommandOption("--key <FILE>")]
    [Description("File of a secret of 16 bytes or more: the same person gets the same hash. Without it the hash leads back to nobody.")]
    public string? Key { get; init; }

    /// <summary>JSON instead of text.</summary>
    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }
}
