namespace Cavaxis.Bedside.ImageKeeping;

/// <summary>An image or a series that is kept beside the record.</summary>
/// <param name="Id">SHA-256 in small hexadecimal: of the file where it is one, of the hashes of its files in their order where it is a series.</param>
/// <param name="Files">Paths of its files, in order; at least one.</param>
public sealed record KeptImage(string Id, IReadOnlyList<string> Files)
{
    /// <summary>True where it is more than one file.</summary>
    public bool IsSeries => Files.Count > 1;
}
