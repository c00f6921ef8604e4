using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Planning.Arterial;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Running;
using Cavaxis.Planning.Scenes;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>schema</c>: the JSON Schemas, made from the types.</summary>
/// <param name="output">Where results go.</param>
public sealed class SchemaCommand(CommandOutput output) : Command<SchemaCommand.Settings>
{
    /// <summary>What <c>schema</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>Which schema.</summary>
        [CommandArgument(0, "[WHICH]")]
        [Description("case (default), plan, rules, circulation, calibration, whatif, insertion, arteries, scene, rapid or rapid-criteria.")]
        public string Which { get; init; } = "case";

        /// <summary>Accepted for consistency; a schema is always JSON.</summary>
        [CommandOption("--json")]
        [Description("A schema is always printed as JSON.")]
        public bool Json { get; init; }
    }

    /// <summary>JSON Schema of the output of <c>plan --json</c>.</summary>
    /// <returns>The schema as text.</returns>
    public static string PlanSchema() => SchemaWriter.Output<PlanningResult>("Cavaxis plan");

    /// <summary>JSON Schema of the output of <c>circulation --json</c>.</summary>
    /// <returns>The schema as text.</returns>
    public static string CirculationSchema() => SchemaWriter.Output<CirculationResult>("Cavaxis circulation");

    /// <summary>JSON Schema of the output of <c>calibrate --json</c>.</summary>
    /// <returns>The schema as text.</returns>
    public static string CalibrationSchema() => SchemaWriter.Output<CalibrationAnswer>("Cavaxis calibration");

    /// <summary>JSON Schema of the output of <c>whatif --json</c>.</summary>
    /// <returns>The schema as text.</returns>
    public static string WhatIfSchema() => SchemaWriter.Output<WhatIfAnswer>("Cavaxis what-if");

    /// <summary>The published schema of insertion studies.</summary>
    /// <returns>JSON.</returns>
    public static string InsertionSchema() => SchemaWriter.Output<InsertionResult>("Cavaxis insertion");

    /// <summary>JSON Schema of the output of <c>arteries --json</c>.</summary>
    /// <returns>The schema as text.</returns>
    public static string ArteriesSchema() => SchemaWriter.Output<ArteriesAnswer>("Cavaxis arteries");

    /// <summary>JSON Schema of the output of <c>rapid --json</c>.</summary>
    /// <returns>The schema as text.</returns>
    public static string RapidSchema() => SchemaWriter.Output<RapidResult>("Cavaxis rapid");

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        output.Text(settings.Which switch
        {
            "case" => CaseFileReader.Schema(),
            "plan" => PlanSchema(),
            "rules" => RuleBookReader.Schema(),
            "circulation" => CirculationSchema(),
            "calibration" => CalibrationSchema(),
            "whatif" => WhatIfSchema(),
            "insertion" => InsertionSchema(),
            "arteries" => ArteriesSchema(),
            "scene" => SceneFileReader.Schema(),
            "rapid" => RapidSchema(),
            "rapid-criteria" => RapidCriteriaReader.Schema(),
            _ => throw new InputFaultException(new InputFault(
                FaultCode.NotAChoice, "schema", InputFault.Shown(settings.Which), "case, plan, rules, circulation, calibration, whatif, insertion, arteries, scene, rapid or rapid-criteria", "Give one of these words.")),
        });
        return (int)ExitCode.Done;
    }
}
