using Cavaxis.Circulation.Calibration;
using Cavaxis.Cli.Output;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Running;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>calibrate</c>: the readings of a case in, the patient's numbers with their spread out.</summary>
/// <param name="output">Where results go.</param>
public sealed class CalibrateCommand(CommandOutput output) : Command<CalibrationSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, CalibrationSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        (int members, ulong seed) = CalibrationOptionsReader.Read(settings);
        CaseFile file = CaseInput.Read(settings.CasePath);
        CirculationSetup setup = CirculationFromCase.Read(file, CatalogueLoader.Load(settings.Catalogues));
        CalibrationAnswer answer = ProgressNote.While(output, "Fitting the circulation to the readings", () =>
        {
            CalibrationResult fit = CaseCalibration.Fit(file, setup, members, seed, cancellationToken);
            return CaseCalibration.Tell(file, setup, fit, seed);
        });
        if (settings.Json)
        {
            output.Json(answer);
        }
        else
        {
            new CalibrationText(output).Write(answer);
        }

        return (int)(answer.Found ? ExitCode.Done : ExitCode.StopFound);
    }
}
