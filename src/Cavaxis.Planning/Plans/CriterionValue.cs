using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Plans;

/// <summary>One cell of the ranking table.</summary>
/// <param name="Name">Criterion.</param>
/// <param name="Value">Value in the criterion's unit.</param>
/// <param name="Points">0 (worst) to 1 (best).</param>
/// <param name="Weight">Weight used.</param>
public sealed record CriterionValue(CriterionName Name, double Value, double Points, double Weight);
