using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What verbs take that are about one patient.</summary>
public class OnePatientSettings : PersonSettings
{
    /// <summary>The patient.</summary>
    [CommandArgument(0, "<PATIENT>")]
    [Description("The patient's identifier.")]
    public required string Patient { get; init; }
}
