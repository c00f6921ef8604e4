using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A view, in words.</summary>
public sealed record StepView
{
    /// <summary>The view with its limit where it has one.</summary>
    [Text(EventLimits.Line)]
    public required string Words { get; init; }
}
