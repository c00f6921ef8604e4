using System.ComponentModel;
using Cavaxis.Cli.RecordVerbs;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary>What <c>patient fhir</c> takes.</summary>
public sealed class ExportSettings : OnePatientSettings
{
    /// <summary>The file.</summary>
    [CommandOption("--to <FILE>")]
    [Description("File to write; what is there is replaced once the new one is whole.")]
    public string? To { get; init; }
}
