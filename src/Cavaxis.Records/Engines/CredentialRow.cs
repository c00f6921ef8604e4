namespace Cavaxis.Records.Engines;

/// <summary>A person's password hash. It is replaced, not kept: old ones would only help whoever steals the file.</summary>
internal sealed record CredentialRow
{
    /// <summary>Whose.</summary>
    public required string Person { get; init; }

    /// <summary>The hash with salt and cost.</summary>
    public required string Hash { get; init; }
}
