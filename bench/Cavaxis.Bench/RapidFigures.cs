using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Bench;

/// <summary>The rapid result from three inputs, in each situation.</summary>
internal static class RapidFigures
{
    /// <summary>Prints the table.</summary>
    /// <param name="clock">The clock.</param>
    public static void Print(Clock clock)
    {
        FigureTable table = new($"Rapid result from age, sex and weight, warm, {MachineLoad.Words()}", "situation", "wall ms", "median ms", "processor ms", "MB", "runs");
        foreach (RapidSituation situation in Enum.GetValues<RapidSituation>())
        {
            RapidInput input = new(situation == RapidSituation.Child ? 6 : 54, Sex.Female, situation == RapidSituation.Child ? 20 : 75) { Situations = [situation] };
            Timing t = clock.Measure(() => RapidAssessment.Of(input, RapidCriteriaReader.BuiltIn, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn));
            table.Add($"{situation}", $"{t.WallMs:F0}", $"{t.MedianMs:F0}", $"{t.ProcessorMs:F0}", $"{t.AllocatedBytes / 1e6:F1}", $"{t.Runs}");
        }

        table.Print();
    }
}
