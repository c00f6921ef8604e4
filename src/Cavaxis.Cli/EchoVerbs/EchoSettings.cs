using System.ComponentModel;
using Cavaxis.Cli.Commands;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.EchoVerbs;

/// <summary>What <c>echo</c> takes.</summary>
public sealed class EchoSettings : CatalogueSettings
{
    /// <summary>Path of the scene.</summary>
    [CommandArgument(0, "<SCENE.json>")]
    [Description("The scene (docs/echo-verbs.md, docs/scene.schema.json).")]
    public required string ScenePath { get; init; }

    /// <summary>Where the picture goes.</summary>
    [CommandOption("--out <FILE>")]
    [Description("The picture: FILE.png, or FILE.gif for a loop.")]
    public string Out { get; init; } = string.Empty;

    /// <summary>Number of frames.</summary>
    [CommandOption("--frames <COUNT>")]
    [Description("Frames of a loop, 1 to 300 [[1 for PNG, 20 for GIF]]. As PNG they are numbered: FILE-001.png and on.")]
    public string? Frames { get; init; }
}
