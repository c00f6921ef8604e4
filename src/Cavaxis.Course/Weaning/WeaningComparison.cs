using Cavaxis.Quantities;

namespace Cavaxis.Course.Weaning;

/// <summary>A reading beside what the fitted model expected of it.</summary>
/// <param name="StartMinute">Start of the step, min.</param>
/// <param name="Quantity">What.</param>
/// <param name="Observed">What was read; null when it was not.</param>
/// <param name="Expected">What the model expected.</param>
/// <param name="StandardDeviationsApart">Difference over the joint error, positive when more was read than expected; null without a reading or without any error.</param>
/// <param name="Words">One sentence.</param>
public sealed record WeaningComparison(
    double StartMinute, WeaningQuantity Quantity, Estimate? Observed, Estimate Expected, double? StandardDeviationsApart, string Words);
