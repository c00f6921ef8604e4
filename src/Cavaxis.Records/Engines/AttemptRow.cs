namespace Cavaxis.Records.Engines;

/// <summary>Failures to sign in under one name, whether or not someone has that name.</summary>
internal sealed record AttemptRow
{
    /// <summary>SHA-256 of the name as it was given, hexadecimal: people type passwords into the wrong field.</summary>
    public required string NameHash { get; init; }

    /// <summary>How many.</summary>
    public required int Failures { get; init; }

    /// <summary>The first of them, microseconds since 1970.</summary>
    public required long FirstUs { get; init; }

    /// <summary>Locked until, microseconds since 1970; null where not.</summary>
    public required long? LockedUntilUs { get; init; }
}
