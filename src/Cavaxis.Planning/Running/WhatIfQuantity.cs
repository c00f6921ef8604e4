using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>A quantity before and after changes, as medians with intervals that hold nine tenths of the members of the fit.</summary>
/// <param name="Name">Name; ends with its unit.</param>
/// <param name="Words">In plain words.</param>
/// <param name="Unit">Unit; "1" for a pure number.</param>
/// <param name="Before">Before the changes; null where not defined.</param>
/// <param name="After">After them; null where not defined.</param>
/// <param name="Difference">After less before, member by member; null where one of the two is.</param>
/// <param name="NotDefined">Why a value is missing; null where none is.</param>
public sealed record WhatIfQuantity(string Name, string Words, string Unit, Estimate? Before, Estimate? After, Estimate? Difference, string? NotDefined);
