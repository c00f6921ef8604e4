namespace Cavaxis.Records.Engines;

/// <summary>Someone is signed in. Only a hash of the token is kept, so that the file signs no one in.</summary>
internal sealed record SessionRow
{
    /// <summary>SHA-256 of the token, hexadecimal.</summary>
    public required string TokenHash { get; init; }

    /// <summary>Who.</summary>
    public required string Person { get; init; }

    /// <summary>Signed in at, microseconds since 1970.</summary>
    public required long BegunUs { get; init; }

    /// <summary>Last seen at, microseconds since 1970; written at most once a minute.</summary>
    public required long SeenUs { get; init; }
}
