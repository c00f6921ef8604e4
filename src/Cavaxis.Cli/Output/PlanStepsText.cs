using Cavaxis.Planning.Steps;

namespace Cavaxis.Cli.Output;

/// <summary>The step list.</summary>
/// <param name="output">Where to.</param>
internal sealed class PlanStepsText(CommandOutput output)
{
    /// <summary>Writes the steps.</summary>
    /// <param name="steps">The steps.</param>
    public void Write(IReadOnlyList<ProcedureStep> steps)
    {
        output.Line("Steps (common practice; local protocol and the device's instructions come first)");
        foreach (ProcedureStep step in steps)
        {
            output.Wrapped($"{step.Number,3}. ", step.Action);
            if (step.HardStop is not null)
            {
                output.Wrapped("     HARD STOP: ", step.HardStop);
            }

            if (step.ShowsIt.Count > 0)
            {
                output.Wrapped("     shown by: ", string.Join("; ", step.ShowsIt) + (step.EvidenceAvailable ? string.Empty : ". NONE OF THESE IS KNOWN TO BE ON HAND"));
            }

            if (step.CannotShowIt.Count > 0)
            {
                output.Wrapped("     not shown: ", string.Join("; ", step.CannotShowIt));
            }

            if (step.Pitfall is not null)
            {
                output.Wrapped("     pitfall: ", step.Pitfall);
            }

            if (step.PredictedPitfall is not null)
            {
                output.Wrapped("     predicted: ", step.PredictedPitfall);
            }
        }

        output.Line();
    }
}
