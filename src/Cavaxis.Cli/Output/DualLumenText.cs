using System.Globalization;
using Cavaxis.Validation;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>Prints for which heights a dual-lumen cannula reaches, and what would have to change where the model and practice disagree.</summary>
internal static class DualLumenText
{
    private static readonly double[] Shown = [160, 172, 180, 190, 200];

    /// <summary>Writes the curve.</summary>
    /// <param name="output">Where to.</param>
    public static void Write(CommandOutput output)
    {
        output.Line();
        Table table = CommandOutput.Titled(
            "Dual-lumen cannula with its return port 9.4 cm from the tip: probability that it fits, by height",
            ["setting", .. Shown.Select(height => string.Create(CultureInfo.InvariantCulture, $"{height:F0} cm")), "under half from", "at 172 cm, for one half"]);
        foreach (DualLumenSetting setting in DualLumenSetting.All)
        {
            double? crossing = DualLumenByHeight.CrossingHeightCm(setting);
            double? change = DualLumenByHeight.ReachChangeMm(setting, DualLumenByHeight.AverageHeightCm);
            table.AddRow(
                [
                    setting.Name,
                    .. Shown.Select(height => CommandOutput.Percent(DualLumenByHeight.Probability(setting, height))),
                    crossing is double height ? string.Create(CultureInfo.InvariantCulture, $"{height:F0} cm") : "every height",
                    change is double mm ? string.Create(CultureInfo.InvariantCulture, $"{mm:+0;-0} mm of reach") : "reach does not do it",
                ]);
        }

        output.Console.Write(table);
        output.Wrapped(string.Empty, "Practice: 190 cm is not served, average height is (common practice, no source). Reach: enter lower or leave less outside. The whole comparison: docs/dual-lumen-by-height.md.");
    }
}
