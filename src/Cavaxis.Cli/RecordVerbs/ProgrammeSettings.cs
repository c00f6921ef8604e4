using System.ComponentModel;
using Cavaxis.Records.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What verbs take that are about one programme.</summary>
public sealed class ProgrammeSettings : PersonSettings
{
    /// <summary>The programme.</summary>
    [CommandOption("--programme <NAME>")]
    [Description("The programme.")]
    public string? Programme { get; init; }

    /// <summary>The programme's name.</summary>
    public Identifier ProgrammeId => Identifier.Of(VerbText.Given(Programme, "--programme"), "--programme");
}
