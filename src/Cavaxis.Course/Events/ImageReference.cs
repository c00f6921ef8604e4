using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>Where an image is kept. The image itself does not stand in the record.</summary>
public sealed record ImageReference
{
    /// <summary>Name or number under which it is found; no name of the patient.</summary>
    [Text(EventLimits.Line)]
    public required string Name { get; init; }

    /// <summary>SHA-256 of the file in small hexadecimal, where it was read by this program.</summary>
    [Text(EventLimits.Hash)]
    public string? FileSha256 { get; init; }
}
