using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>What verbs take that write something about one cannula.</summary>
public class OneCannulaSettings : WritingSettings
{
    /// <summary>The cannula.</summary>
    [CommandArgument(1, "<CANNULA>")]
    [Description("Name of the cannula in this record, such as drainage.")]
    public required string Cannula { get; init; }

    /// <summary>Depth.</summary>
    [CommandOption("--depth <CM>")]
    [Description("Depth at the skin, cm.")]
    public string? Depth { get; init; }

    /// <summary>Turn.</summary>
    [CommandOption("--turn <DEGREES>")]
    [Description("Turn of a dual-lumen return port away from the tricuspid valve, degrees; positive towards the back of the patient.")]
    public string? Turn { get; init; }

    /// <summary>How it was seen.</summary>
    [CommandOption("--seen-by <SIGHT>")]
    [Description("How it was seen: skinMark, vascularUltrasound, transthoracicUltrasound, transoesophagealUltrasound, fluoroscopy, plainFilm, computedTomography or directSight.")]
    public string? SeenBy { get; init; }
}
