using Cavaxis.Cli.Output;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>insertion</c>: where wire and cannulae of a plan go in sampled curved anatomies.</summary>
/// <param name="output">Where results go.</param>
public sealed class InsertionCommand(CommandOutput output) : Command<InsertionSettings>
{
    private static readonly string[] WireWords = ["floppy", "standard", "stiff", "extra-stiff"];

    /// <inheritdoc/>
    public override int Execute(CommandContext context, InsertionSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        List<InputFault> faults = [];
        ulong rank = PlanOptionsReader.Whole("--plan", settings.Plan, 1, 100, faults);
        ulong anatomies = PlanOptionsReader.Whole("--anatomies", settings.Anatomies, InsertionOptions.FewestAnatomies, InsertionOptions.MostAnatomies, faults);
        ulong seed = PlanOptionsReader.Whole("--seed", settings.Seed, 0, PlanOptionsReader.LargestSeed, faults);
        int wire = Array.IndexOf(WireWords, settings.Wire);
        if (wire < 0)
        {
            faults.Add(new InputFault(FaultCode.NotAChoice, "--wire", InputFault.Shown(settings.Wire), string.Join(", ", WireWords), "Choose by the bending modulus that the maker or a bench gives."));
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        InsertionDrawing? drawing = settings.Drawing is null ? null : InsertionDrawing.For(settings.Drawing);
        CaseFile file = CaseInput.Read(settings.CasePath);
        DeviceCatalogue catalogue = CatalogueLoader.Load(settings.Catalogues);
        // The circulation decides over the ranking, so that a rank means the same plan here as in `plan`.
        PlanningResult planning = ProgressNote.While(output, "Planning", () => Planner.Plan(file, catalogue, RuleBookReader.BuiltIn, new PlanningOptions { Circulation = true }, cancellationToken));
        if ((int)rank > planning.Plans.Count)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--plan", settings.Plan, planning.Plans.Count == 0 ? "no plan was found for this case" : FormattableString.Invariant($"1 to {planning.Plans.Count}"), "Choose the rank of a plan in the list of `plan`."));
        }

        InsertionOptions options = new() { Wire = (WireClass)wire, Anatomies = (int)anatomies, Seed = seed, Advice = !settings.NoAdvice };
        InsertionResult result = ProgressNote.While(
            output,
            FormattableString.Invariant($"Inserting into {options.Anatomies} anatomies"),
            told => InsertionStudy.Of(file, catalogue, planning, planning.Plans[(int)rank - 1], options, told, cancellationToken));
        if (drawing is not null && result.Cannulae.Count > 0)
        {
            drawing.Write(result);
        }

        if (settings.Json)
        {
            output.Json(result);
        }
        else
        {
            new InsertionText(output).Write(result);
        }

        return (int)ExitCode.Done;
    }
}
