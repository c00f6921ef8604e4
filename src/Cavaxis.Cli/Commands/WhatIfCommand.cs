using Cavaxis.Circulation.Calibration;
using Cavaxis.Cli.Output;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Arterial;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>whatif</c>: what a change would do, in every member of the fit.</summary>
/// <param name="output">Where results go.</param>
public sealed class WhatIfCommand(CommandOutput output) : Command<WhatIfSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, WhatIfSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        (int members, ulong seed) = CalibrationOptionsReader.Read(settings);
        if (settings.Changes.Length == 0)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--change", "(nothing)", "at least one change name=value", "Give a change such as --change flow=4.5."));
        }

        CaseFile file = CaseInput.Read(settings.CasePath);
        DeviceCatalogue catalogue = CatalogueLoader.Load(settings.Catalogues);
        CirculationSetup setup = CirculationFromCase.Read(file, catalogue);

        // Names and ranges are checked before the fit, which takes seconds; values are read again against the fit.
        IReadOnlyList<RequestedChange> changes = ChangeReader.Read("--change", settings.Changes, setup.Parameters);
        WhatIfAnswer answer = ProgressNote.While(output, "Fitting the circulation and asking what if", () =>
        {
            CalibrationResult fit = CaseCalibration.Fit(file, setup, members, seed, cancellationToken);
            changes = fit.Best is { } best ? ChangeReader.Read("--change", settings.Changes, best) : changes;
            WhatIfAnswer asked = CaseCalibration.Ask(file, setup, fit, changes, cancellationToken);
            return settings.Arteries && asked.Found ? asked with { Arteries = ArterialWhatIf.Of(file, catalogue, fit.Best!, changes, cancellationToken) } : asked;
        });
        if (settings.Json)
        {
            output.Json(answer);
        }
        else
        {
            new WhatIfText(output).Write(answer);
        }

        return (int)(answer.Found ? ExitCode.Done : ExitCode.StopFound);
    }
}
