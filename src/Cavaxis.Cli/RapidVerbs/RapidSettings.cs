using System.ComponentModel;
using Cavaxis.Cli.Commands;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RapidVerbs;

/// <summary>What <c>rapid</c> takes.</summary>
public sealed class RapidSettings : CatalogueSettings
{
    /// <summary>Age.</summary>
    [CommandOption("--age <YEARS>")]
    [Description("Age in years, months as a fraction.")]
    public string? Age { get; init; }

    /// <summary>Sex.</summary>
    [CommandOption("--sex <SEX>")]
    [Description("female or male, as the size tables use it.")]
    public string? Sex { get; init; }

    /// <summary>Weight.</summary>
    [CommandOption("--weight <KG>")]
    [Description("Weight in kilograms; a guess will do.")]
    public string? Weight { get; init; }

    /// <summary>Height.</summary>
    [CommandOption("--height <CM>")]
    [Description("Height in centimetres, where somebody knows it.")]
    public string? Height { get; init; }

    /// <summary>Situations.</summary>
    [CommandOption("--situation <NAME>")]
    [Description("arrestOutOfHospital, arrestInHospital, cardiogenicShock, lungFailure, trauma, pulmonaryEmbolism, bridgeToTransplant, pregnancy, obesity, child or hypothermia; may be given several times, the leading one first.")]
    public string[] Situations { get; init; } = [];

    /// <summary>Minutes without circulation.</summary>
    [CommandOption("--no-flow <MIN>")]
    [Description("Minutes from collapse to the first compressions.")]
    public string? NoFlow { get; init; }

    /// <summary>Minutes of compressions.</summary>
    [CommandOption("--low-flow <MIN>")]
    [Description("Minutes of compressions so far.")]
    public string? LowFlow { get; init; }

    /// <summary>Minutes to flow.</summary>
    [CommandOption("--to-flow <MIN>")]
    [Description("Minutes until support is expected to flow.")]
    public string? ToFlow { get; init; }

    /// <summary>Time of collapse.</summary>
    [CommandOption("--collapse <HH:MM>")]
    [Description("Time of the collapse, instead of --no-flow; needs --now.")]
    public string? Collapse { get; init; }

    /// <summary>Time of the first compressions.</summary>
    [CommandOption("--compressions <HH:MM>")]
    [Description("Time of the first compressions, instead of --low-flow; needs --now.")]
    public string? Compressions { get; init; }

    /// <summary>Time now.</summary>
    [CommandOption("--now <HH:MM>")]
    [Description("Time now. The clock is given, never read.")]
    public string? Now { get; init; }

    /// <summary>Answers.</summary>
    [CommandOption("--answer <NAME=ANSWER>")]
    [Description("An answer: yes, no or unknown, a number, or a word; may be given several times. The result lists the names.")]
    public string[] Answers { get; init; } = [];

    /// <summary>Vessels seen.</summary>
    [CommandOption("--vessel <NAME.SIDE=SEEN>")]
    [Description("A vessel that was looked at: a diameter in mm, open, narrowed, occluded or clot, such as commonFemoralArtery.right=7.5; may be given several times.")]
    public string[] Vessels { get; init; } = [];

    /// <summary>Own criteria.</summary>
    [CommandOption("--criteria <FILE>")]
    [Description("Criteria of your own instead of the built-in ones.")]
    public string? Criteria { get; init; }

    /// <summary>Own rule book.</summary>
    [CommandOption("--rules <FILE>")]
    [Description("A rule book of your own instead of the built-in one.")]
    public string? Rules { get; init; }

    /// <summary>Seed.</summary>
    [CommandOption("--seed <NUMBER>")]
    [Description("Seed of the sampled anatomies (1).")]
    public string Seed { get; init; } = "1";
}
