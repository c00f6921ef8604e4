using System.ComponentModel;
using Cavaxis.Cli.RecordVerbs;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary>What verbs take that write a sheet of one patient.</summary>
public sealed class SheetSettings : OnePatientSettings
{
    /// <summary>The file.</summary>
    [CommandOption("--report <FILE>")]
    [Description("File to write, ending in .pdf or .html; what is there is replaced once the new one is whole.")]
    public string? Report { get; init; }
}
