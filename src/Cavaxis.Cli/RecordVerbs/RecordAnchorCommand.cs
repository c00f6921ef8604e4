using System.ComponentModel;
using System.Text;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>record anchor</c>: the end of the chain as a line to keep elsewhere.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class RecordAnchorCommand(CommandOutput output, SecretReader secrets) : PersonCommand<RecordAnchorCommand.Settings>(output, secrets)
{
    /// <summary>What <c>record anchor</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>File to write.</summary>
        [CommandOption("--out <FILE>")]
        [Description("Write the line to this file too; keep it on another machine.")]
        public string? Out { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        await desk.RequireKeeperAsync();
        RecordAnchor anchor = RecordAnchor.Of(await desk.Store.AnchorAsync());
        if (settings.Out is string path)
        {
            InputFile.WriteWhole(path, Encoding.UTF8.GetBytes(anchor.Anchor + "\n"));
        }

        if (settings.Json)
        {
            Output.Json(anchor);
        }
        else
        {
            Output.Line(anchor.Anchor);
        }
    }
}
