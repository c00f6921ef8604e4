using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>How the change of one quantity is read. The first cause that holds is named; where none holds, that is said.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Words">Beginning of the sentence.</param>
/// <param name="Applies">The supports it is told for.</param>
/// <param name="Rises">Causes of a rise, the more particular first.</param>
/// <param name="Falls">Causes of a fall.</param>
/// <param name="LookNext">What to look at next when it moves.</param>
/// <param name="Question">Key of the question where that is found.</param>
internal sealed record ReadingRule(
    CirculationQuantity Quantity,
    string Words,
    Func<SupportSense, bool> Applies,
    IReadOnlyList<ReadingCause> Rises,
    IReadOnlyList<ReadingCause> Falls,
    string LookNext,
    string Question);
