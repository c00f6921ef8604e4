using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Plans;

/// <summary>One cell of the ranking table.</summary>
/// <param name="Name">Criterion.</param>
/// <param name="Value">Value in the criterion's unit.</param>
/// <param name="Points">0 (worst) to 1 (best).</param>
/// <param name="Weight">Weight used.</param>
/// <param name="OnCirculation">True where the value is that of the computed circulation, false where it follows from the devices, the anatomy or the limits of recirculation.</param>
public sealed record CriterionValue(CriterionName Name, double Value, double Points, double Weight, bool OnCirculation);
