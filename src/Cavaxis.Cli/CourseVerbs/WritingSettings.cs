using System.ComponentModel;
using Cavaxis.Cli.RecordVerbs;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>What verbs take that write something into a patient's course.</summary>
public class WritingSettings : OnePatientSettings
{
    /// <summary>When it happened.</summary>
    [CommandOption("--at <TIME>")]
    [Description("When it happened, with offset from UTC: 2031-02-03T04:05+01:00 or 2031-02-03T03:05Z [[now]].")]
    public string? At { get; init; }

    /// <summary>Version on the strength of which it is written.</summary>
    [CommandOption("--version <NUMBER>")]
    [Description("Version of the record that you looked at (`course show` tells it): nothing is written where others wrote since.")]
    public string? Version { get; init; }

    /// <summary>Remark.</summary>
    [CommandOption("--remark <TEXT>")]
    [Description("Remark, where the kind of entry takes one.")]
    public string? Remark { get; init; }
}
