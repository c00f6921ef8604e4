using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Finds out what would change the number that matters, by trying steps of the controls on the patient shown.</summary>
internal static class LeverSearch
{
    private static readonly (string Key, int Steps)[] Tried =
        [("flow", -2), ("flow", 2), ("speed", -2), ("speed", 2), ("volume", 2), ("contractility", 3), ("resistance", -2), ("peep", -2), ("balloon", 4), ("vent", 2)];

    /// <summary>Tries.</summary>
    /// <param name="picture">The picture; its shown patient is at rest.</param>
    /// <param name="stop">Stops.</param>
    /// <returns>Largest effect first; those without effect are left out.</returns>
    public static IReadOnlyList<Lever> Of(RunningPicture picture, CancellationToken stop)
    {
        SettledState shown = picture.Shown!;
        double before = shown.RequireSummary()[picture.KeyQuantity];
        List<(string Words, CirculationParameters Patient)> trials = [];
        IReadOnlyList<Control> controls = ControlTable.For(shown.Parameters, picture.ReferenceSpeedPerMin);
        foreach ((string key, int steps) in Tried)
        {
            if (controls.FirstOrDefault(c => c.Key == key) is Control control)
            {
                Stepper stepper = Stepper.Of(control, shown.Parameters);
                for (int i = 0; i < Math.Abs(steps); i++)
                {
                    stepper = stepper.Stepped(steps > 0);
                }

                if (Applied(stepper, shown.Parameters) is CirculationParameters patient)
                {
                    trials.Add((stepper.Sentence, patient));
                }
            }
        }

        IReadOnlyList<SettledState> settled = CirculationSimulator.SettleForComparison([.. trials.Select(static t => t.Patient)], stop);
        double least = ReadingTable.LeastOf(picture.KeyQuantity);
        return [.. trials.Zip(settled)
            .Where(static pair => pair.Second.Settled)
            .Select(pair => new Lever(pair.First.Words, pair.Second.RequireSummary()[picture.KeyQuantity] - before))
            .Where(lever => Math.Abs(lever.Difference) >= least)
            .OrderByDescending(static lever => Math.Abs(lever.Difference))];
    }

    private static CirculationParameters? Applied(Stepper stepper, CirculationParameters patient)
    {
        try
        {
            return stepper.Change()?.Apply(patient);
        }
        catch (InputFaultException)
        {
            // A step that this patient cannot take is no lever.
            return null;
        }
    }
}
