using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Events;

/// <summary>The file and row from which readings came.</summary>
public sealed record ImportOrigin
{
    /// <summary>SHA-256 of the file in small hexadecimal.</summary>
    [Text(EventLimits.Hash)]
    public required string FileSha256 { get; init; }

    /// <summary>Rows taken in from the file.</summary>
    [Number(1, 200000, "1")]
    public required int Rows { get; init; }

    /// <summary>Line of the file, the header being line 1.</summary>
    [Number(1, 1000000, "1")]
    public required int Line { get; init; }

    /// <summary>Name of the file as it was given.</summary>
    [Text(EventLimits.Line)]
    public string? FileName { get; init; }
}
