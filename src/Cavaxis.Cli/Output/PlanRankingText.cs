using System.Globalization;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The table of all plans.</summary>
/// <param name="output">Where to.</param>
internal sealed class PlanRankingText(CommandOutput output)
{
    /// <summary>Writes the table.</summary>
    /// <param name="result">The result.</param>
    public void Write(PlanningResult result)
    {
        bool tried = result.Plans.Any(static plan => plan.Insertion is not null);
        string[] goesIn = tried ? ["goes in"] : [];
        Table table = CommandOutput.Titled("Plans, best first (calculated)", ["", "plan", "Fr", "L/min", "inlet", "fit", .. goesIn, "SaO2", "DO2:VO2", "score", "marks"]);
        foreach (TableColumn column in table.Columns)
        {
            column.NoWrap().Padding(0, 1);
        }

        foreach (CannulationPlan plan in result.Plans)
        {
            string[] share = tried ? [plan.Insertion?.EveryCannulaRight is { } right ? string.Create(CultureInfo.InvariantCulture, $"{100 * right.Value:F0} ({100 * right.Low:F0}-{100 * right.High:F0}) %") : "-"] : [];
            string[] cells =
            [
                plan.Rank.ToString(CultureInfo.InvariantCulture),
                Markup.Escape(ConfigurationTable.Of(plan.Configuration).ShortName),
                string.Join("/", plan.Cannulae.Select(c => c.OuterDiameterFrench.ToString("F0", CultureInfo.InvariantCulture))),
                plan.Circuit.FlowLPerMin.ToString("F1", CultureInfo.InvariantCulture),
                plan.Circuit.InletPressureMmHg.Value.ToString("F0", CultureInfo.InvariantCulture),
                CommandOutput.Percent(plan.ProbabilityAllPortsInZone),
                .. share,
                string.Create(CultureInfo.InvariantCulture, $"{plan.SaturationPercent().Value:F0} %"),
                plan.DeliveryToConsumption().Value.ToString("F1", CultureInfo.InvariantCulture),
                plan.Score.ToString("F2", CultureInfo.InvariantCulture),
                Marks(plan),
            ];
            table.AddRow(cells);
        }

        output.Console.Write(table);
        output.Wrapped(string.Empty, "Fr: cannulae in the order drainage / return; inlet: mmHg before the pump; fit: probability that every port can be brought into its zone under imaging; STOP and warn: number of findings of that grade; P: on the Pareto front, no other plan without a stop is as good in everything and better in something.");
        if (result.Plans.FirstOrDefault(static plan => plan.Insertion is not null)?.Insertion is { } glance)
        {
            output.Wrapped(string.Empty, string.Create(
                CultureInfo.InvariantCulture,
                $"goes in: share of {glance.Anatomies} sampled curved anatomies in which wire ({PlainWords.FromName(glance.Wire.ToString())}) and every venous cannula go as they should, with the interval of counting alone; stiffness and friction are drawn from ranges, so it compares plans and is not in the score."));
        }

        foreach (NotPlanned none in result.NotPlanned)
        {
            output.Wrapped(string.Empty, $"Not planned: {ConfigurationTable.Of(none.Configuration).Name}: {none.Reason}.");
        }

        output.Line();
    }

    private static string Marks(CannulationPlan plan)
    {
        int stops = plan.CountOf(FindingGrade.Stop);
        int warnings = plan.CountOf(FindingGrade.Warning);
        List<string> marks = [];
        if (stops > 0)
        {
            marks.Add($"STOP {stops}");
        }

        if (warnings > 0)
        {
            marks.Add($"warn {warnings}");
        }

        if (plan.OnParetoFront)
        {
            marks.Add("P");
        }

        return string.Join(' ', marks);
    }
}
