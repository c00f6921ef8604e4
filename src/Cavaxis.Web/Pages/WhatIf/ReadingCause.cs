namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>A cause that is named where all of its conditions hold.</summary>
/// <param name="Because">Clause after "because"; a quantity in braces stands for its values, such as "4.6 to 5.4 L/min".</param>
/// <param name="Conditions">What must hold.</param>
internal sealed record ReadingCause(string Because, params IReadOnlyList<ReadingCondition> Conditions);
