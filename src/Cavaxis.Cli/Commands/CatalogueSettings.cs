using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What every command takes that reads the catalogue.</summary>
public class CatalogueSettings : CommandSettings
{
    /// <summary>JSON instead of tables.</summary>
    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }

    /// <summary>User catalogues.</summary>
    [CommandOption("--catalogue <FILE>")]
    [Description("A catalogue of your own devices to add; may be given several times.")]
    public string[] Catalogues { get; init; } = [];
}
