using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Weaning;

/// <summary>A trial of less support, step by step.</summary>
public sealed record WeaningTrial
{
    /// <summary>A trial.</summary>
    /// <param name="kind">What is tried.</param>
    /// <param name="steps">Its steps in the order of time, at least one, none before the one before it has ended.</param>
    /// <exception cref="InputFaultException">There is no step, or steps overlap.</exception>
    public WeaningTrial(WeaningKind kind, IReadOnlyList<WeaningStep> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        if (steps.Count == 0)
        {
            throw new InputFaultException(new InputFault(FaultCode.MissingField, nameof(steps), "(nothing)", "at least one step", "Enter the steps of the trial."));
        }

        for (int i = 1; i < steps.Count; i++)
        {
            double ended = steps[i - 1].StartMinute + steps[i - 1].DurationMin;
            if (steps[i].StartMinute < ended)
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction, string.Create(CultureInfo.InvariantCulture, $"steps[{i}].startMinute"), steps[i].StartMinute.ToString("R", CultureInfo.InvariantCulture),
                    string.Create(CultureInfo.InvariantCulture, $"{ended:G6} min or later"), "A step begins when the one before it has ended."));
            }
        }

        (Kind, Steps) = (kind, [.. steps]);
    }

    /// <summary>What is tried.</summary>
    public WeaningKind Kind { get; }

    /// <summary>Its steps in the order of time.</summary>
    public IReadOnlyList<WeaningStep> Steps { get; }
}
