using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>A second person who saw the evidence.</summary>
public sealed record SecondPerson
{
    /// <summary>Name as the team knows it.</summary>
    [Text(EventLimits.Name)]
    public required string Name { get; init; }

    /// <summary>Name to sign in with, where the person has one.</summary>
    [Text(EventLimits.Name)]
    public string? Person { get; init; }
}
