using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Fit;

/// <summary>The probability that one cannula fits, for questions outside a plan: over heights, or after a change of the anatomy.</summary>
public static class FitProbability
{
    /// <summary>Probability that some depth exists at which every port lies in its zone, to be found under imaging.</summary>
    /// <param name="question">Cannula, configuration, side, height and length outside.</param>
    /// <param name="samples">Sampled anatomies of the patient.</param>
    /// <param name="rules">Rule book with the zones.</param>
    /// <returns>Share of the anatomies, 0 to 1; 0 when the cannula lacks a port that a rule names.</returns>
    /// <exception cref="ArgumentException">The configuration has no such role, or the role does not reach the cavo-atrial axis.</exception>
    public static double WithImaging(FitQuestion question, AxisSamples samples, RuleBook rules)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentNullException.ThrowIfNull(rules);
        RoleSlot? slot = ConfigurationTable.Of(question.Configuration).Slots.FirstOrDefault(s => s.Role == question.Role);
        if (slot is null || !VenousEntry.Reaches(slot.Route))
        {
            throw new ArgumentException(
                $"{question.Configuration} has no {question.Role} that reaches the cavo-atrial axis.", nameof(question));
        }

        ZoneRule[] zones = [.. rules.Zones.Where(
            rule => rule.Role == question.Role && rule.Configurations.Contains(question.Configuration))];
        AxisLandmarks landmarks = new(samples, question.Shift);
        ZoneBounds bounds = new(zones, landmarks, question.HeightCm);
        DepthWindows? windows = DepthWindows.Of(
            question.Cannula, new VenousEntry(slot.Route, question.Side), zones, bounds, landmarks, question.LengthOutsideMm);
        return windows is null ? 0 : (double)windows.SuitableCount / samples.Count;
    }
}
