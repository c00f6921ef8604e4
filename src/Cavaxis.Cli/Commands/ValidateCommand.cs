using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Quantities.Faults;
using Cavaxis.Validation;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>validate</c>: every reference row, computed now.</summary>
/// <param name="output">Where results go.</param>
public sealed class ValidateCommand(CommandOutput output) : Command<ValidateCommand.Settings>
{
    private const string PlanningRoom = "Planning";

    /// <summary>What <c>validate</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>JSON instead of a table.</summary>
        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }

        /// <summary>Only one room.</summary>
        [CommandOption("--room <NAME>")]
        [Description("Only the rows of one room, such as Blood.")]
        public string? Room { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        IReadOnlyList<ValidationRow> all = ProgressNote.While(output, "Computing the reference rows", AllChecks.Rows);
        ValidationRow[] rows = [.. all.Where(
            row => settings.Room is null || string.Equals(row.Room, settings.Room, StringComparison.OrdinalIgnoreCase))];
        if (rows.Length == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotAChoice, "--room", InputFault.Shown(settings.Room ?? string.Empty),
                string.Join(", ", all.Select(row => row.Room).Distinct()), "Give one of these rooms."));
        }

        if (settings.Json)
        {
            output.Json(rows);
        }
        else
        {
            ValidationText.Write(output, rows);
            if (rows.Any(row => row.Room == PlanningRoom))
            {
                ProgressNote.While(output, "Computing the dual-lumen table", () => DualLumenText.Write(output));
            }
        }

        return (int)(rows.All(row => row.AsStated) ? ExitCode.Done : ExitCode.StopFound);
    }
}
