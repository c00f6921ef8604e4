using Cavaxis.Quantities;

namespace Cavaxis.Course.Weaning;

/// <summary>One reading at one step of a trial.</summary>
/// <param name="Quantity">What.</param>
/// <param name="Value">Value in its unit with the error of one reading.</param>
public sealed record WeaningReading(WeaningQuantity Quantity, Estimate Value);
