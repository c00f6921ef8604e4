using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>What one sign says about one cause.</summary>
/// <param name="Quantity">Sign.</param>
/// <param name="Observed">Observed change, unit of the quantity.</param>
/// <param name="Expected">Change that the cause lets expect in patients like this one, unit of the quantity.</param>
/// <param name="BeforeKnown">False where there was no reading before, so that the value now was compared with usual levels.</param>
/// <param name="Weight">Natural logarithm of the factor by which the sign alone moves the odds of the cause against all others together.</param>
/// <param name="Sentence">The same in words.</param>
public sealed record SignEvidence(ObservedQuantity Quantity, Estimate Observed, Estimate Expected, bool BeforeKnown, double Weight, string Sentence);
