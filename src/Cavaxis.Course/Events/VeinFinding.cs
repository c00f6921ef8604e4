using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>What was found in one vein.</summary>
public sealed record VeinFinding
{
    /// <summary>The vein.</summary>
    public required FollowUpVein Vein { get; init; }

    /// <summary>The patient's own side; null for the caval veins.</summary>
    public BodySide? Side { get; init; }

    /// <summary>What was found.</summary>
    public required ClotFinding Clot { get; init; }

    /// <summary>Remark.</summary>
    [Text(EventLimits.Remark)]
    public string? Remark { get; init; }
}
