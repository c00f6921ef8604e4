using Cavaxis.Course.Criteria;

namespace Cavaxis.Course.Weaning;

/// <summary>A published criterion of weaning: of which trial, when it is asked and what it reads.</summary>
/// <param name="Kind">Of which trial.</param>
/// <param name="Role">When it is asked. A stop criterion that is met means that the source ends the trial there.</param>
/// <param name="Quantity">What it reads.</param>
/// <param name="Criterion">Side of the threshold, with source.</param>
public sealed record WeaningCriterion(WeaningKind Kind, WeaningRole Role, WeaningQuantity Quantity, Criterion Criterion);
