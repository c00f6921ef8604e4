using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>Something about a plan that the clinician must know, graded, with what would resolve it.</summary>
/// <param name="Id">Stable name of the rule that speaks.</param>
/// <param name="Grade">Stop, warning or caution.</param>
/// <param name="Says">What was found.</param>
/// <param name="Resolve">What would resolve it.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record PlanFinding(string Id, FindingGrade Grade, string Says, string Resolve, Source Source);
