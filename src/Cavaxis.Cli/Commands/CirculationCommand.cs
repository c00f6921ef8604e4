using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Cli.Output;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.CirculationReports;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>circulation</c>: a case in, the settled circulation with its circuit out.</summary>
/// <param name="output">Where results go.</param>
public sealed class CirculationCommand(CommandOutput output) : Command<CirculationSettings>
{
    private const double ShortestS = 1;
    private const double LongestS = 3600;

    /// <inheritdoc/>
    public override int Execute(CommandContext context, CirculationSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        double? seconds = Seconds(settings.Seconds);
        PictureFile? plot = settings.PlotPath is null ? null : PictureFile.For("--plot", settings.PlotPath, "circulation");
        CaseFile? file = settings.CasePath is null ? null : CaseInput.Read(settings.CasePath);
        if (file is null && !settings.Parameters)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "CASE.json", "(nothing)", "a case file", "Name a case file, or list the numbers of the model with --parameters."));
        }

        CirculationSetup? setup = file is null ? null : CirculationFromCase.Read(file, CatalogueLoader.Load(settings.Catalogues));
        CirculationParameters start = setup?.Parameters ?? CirculationParameters.Adult;
        IReadOnlyList<RequestedChange> changes = ChangeReader.Read("--set", settings.Changes, start);
        if (settings.Fitted && setup is not null)
        {
            CalibrationResult fit = ProgressNote.While(
                output, "Fitting the circulation to the readings", () => CaseCalibration.Fit(file!, setup, 0, 0, cancellationToken));
            if (fit.Best is null)
            {
                Say(CirculationRun.Without(file!, setup, new CirculationQuestion(start, changes, seconds, false), $"No fit to the readings: {fit.Reason}"), settings);
                return (int)ExitCode.StopFound;
            }

            start = fit.Best;
            changes = ChangeReader.Read("--set", settings.Changes, start);
        }

        if (settings.Parameters)
        {
            ParameterListing listing = ParameterListing.Of(setup, ChangeReader.Apply(start, changes));
            List(listing, settings.Json);
            return (int)ExitCode.Done;
        }

        CirculationQuestion question = new(start, changes, seconds, settings.Fitted);
        CirculationResult result = ProgressNote.While(output, "Computing the circulation", () => CirculationRun.Compute(file!, setup!, question));
        if (plot is not null && result.Settled)
        {
            ProgressNote.While(output, "Drawing", () => plot.Write(CirculationSheet.Of(result)));
        }

        Say(result, settings);
        return (int)(result.Settled ? ExitCode.Done : ExitCode.StopFound);
    }

    private static double? Seconds(string? text)
    {
        if (text is null)
        {
            return null;
        }

        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double seconds) && seconds >= ShortestS && seconds <= LongestS
            ? seconds
            : throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--seconds", text.Length == 0 ? "(nothing)" : InputFault.Shown(text),
                FormattableString.Invariant($"a number from {ShortestS} to {LongestS}"), "Give a length in seconds or leave the option out."));
    }

    private void List(ParameterListing listing, bool json)
    {
        if (json)
        {
            output.Json(listing);
        }
        else
        {
            ParameterText.Write(output, listing);
        }
    }

    private void Say(CirculationResult result, CirculationSettings settings)
    {
        if (settings.Json)
        {
            output.Json(result);
            return;
        }

        new CirculationText(output).Write(result);
        if (settings.PlotPath is not null)
        {
            output.Line(result.Settled ? $"Picture written to {settings.PlotPath}." : "No picture was written: there are no numbers to draw.");
        }
    }
}
