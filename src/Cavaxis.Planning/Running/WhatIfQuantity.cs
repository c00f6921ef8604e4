using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>A quantity before and after changes, as medians with intervals that hold nine tenths of the members of the fit.</summary>
/// <param name="Name">Name; ends with its unit.</param>
/// <param name="Words">In plain words.</param>
/// <param name="Unit">Unit; "1" for a pure number.</param>
/// <param name="Before">Before the changes.</param>
/// <param name="After">After them.</param>
/// <param name="Difference">After less before, member by member.</param>
public sealed record WhatIfQuantity(string Name, string Words, string Unit, Estimate Before, Estimate After, Estimate Difference);
