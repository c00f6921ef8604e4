using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What every verb of the record takes.</summary>
public class RecordSettings : CommandSettings
{
    /// <summary>Where the record is.</summary>
    [CommandOption("--store <STORE>")]
    [Description("Where the record is: a file, \"Host=…;Database=…\" for PostgreSQL, or @FILE with that text [[record.db in your data folder]].")]
    public string? Store { get; init; }

    /// <summary>JSON instead of words.</summary>
    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }
}
