using System.Globalization;
using Cavaxis.Arteries.Findings;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Cli.Output;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Arterial;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.ArterialReports;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>arteries</c>: which organ gets which blood on support, where the two flows meet, and whether the legs are supplied.</summary>
/// <param name="output">Where results go.</param>
public sealed class ArteriesCommand(CommandOutput output) : Command<ArteriesSettings>
{
    private const double HighestFlow = 8;
    private const double HighestStrength = 5;
    private const int MostPoints = 60;

    /// <inheritdoc/>
    public override int Execute(CommandContext context, ArteriesSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        List<InputFault> faults = [];
        double[] flows = [.. settings.Flows.Select(text => Number("--flow", text, HighestFlow, faults))];
        double[] strengths = [.. settings.Strengths.Select(text => Number("--strength", text, HighestStrength, faults))];
        int? rank = settings.Plan is null ? null : (int)PlanOptionsReader.Whole("--plan", settings.Plan, 1, 100, faults);
        if (Math.Max(1, flows.Length) * Math.Max(1, strengths.Length) > MostPoints)
        {
            faults.Add(new InputFault(
                FaultCode.BadOption, "--flow, --strength", string.Create(CultureInfo.InvariantCulture, $"{flows.Length} times {strengths.Length}"), $"at most {MostPoints} together", "Ask for fewer; each takes seconds."));
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        PictureFile? drawing = settings.Drawing is null ? null : PictureFile.For("--drawing", settings.Drawing, "arteries");
        CaseFile file = CaseInput.Read(settings.CasePath);
        DeviceCatalogue catalogue = CatalogueLoader.Load(settings.Catalogues);
        ArteriesBasis basis = ProgressNote.While(
            output, settings.Fitted ? "Fitting the circulation to the readings" : "Finding the circulation", () => ArteriesBasis.Of(file, catalogue, rank, settings.Fitted, cancellationToken));
        if (basis.Circulation is not CirculationParameters start)
        {
            return Say(ArteriesAnswer.None(file, basis.Words, basis.Reason), settings);
        }

        IReadOnlyList<RequestedChange> changes = ChangeReader.Read("--set", settings.Changes, start);
        CirculationParameters asked = ChangeReader.Apply(start, changes);
        if (flows.Length > 0)
        {
            asked = asked.With(CirculationParameter.TargetFlowLPerMin, flows[0]);
        }

        if (strengths.Length == 1)
        {
            asked = ParameterChange.By(CirculationParameter.LeftVentricleElastanceMmHgPerMl, strengths[0]).Apply(asked);
        }

        ArteriesQuestion question = new(file, catalogue, asked, basis.Plan, basis.Words, basis.Assumed)
        {
            SweepFlowsLPerMin = flows.Length > 1 || strengths.Length > 1 ? flows.Length > 0 ? flows : [asked[CirculationParameter.TargetFlowLPerMin]] : [],
            SweepStrengths = strengths.Length > 1 ? strengths : [1],
        };
        ArteriesAnswer answer = ProgressNote.Shared(output, "Computing the arteries", told => ArteriesStudy.Of(question, told, cancellationToken));
        if (drawing is not null && answer.Result is not null)
        {
            drawing.Write(ArterialSheet.Of(answer));
        }

        return Say(answer, settings);
    }

    private static double Number(string option, string text, double highest, List<InputFault> faults)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= 0 && value <= highest)
        {
            return value;
        }

        faults.Add(new InputFault(
            FaultCode.BadOption, option, text.Length == 0 ? "(nothing)" : InputFault.Shown(text), string.Create(CultureInfo.InvariantCulture, $"a number from 0 to {highest}"), "Write the number with a point and without a unit."));
        return 0;
    }

    private int Say(ArteriesAnswer answer, ArteriesSettings settings)
    {
        if (settings.Json)
        {
            output.Json(answer);
        }
        else
        {
            new ArteriesText(output).Write(answer);
            if (settings.Drawing is not null)
            {
                output.Line(answer.Found ? $"Drawing written to {settings.Drawing}." : "No drawing was written: there are no numbers to draw.");
            }
        }

        // A leg in want is a finding that stops: nobody may read past it in a script.
        bool stop = answer.Result is null || answer.Result.Limbs.Any(static l => l.Supply == LimbSupply.Starved);
        return (int)(stop ? ExitCode.StopFound : ExitCode.Done);
    }
}
