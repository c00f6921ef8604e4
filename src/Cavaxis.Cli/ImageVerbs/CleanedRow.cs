namespace Cavaxis.Cli.ImageVerbs;

/// <summary>A file that was cleaned.</summary>
/// <param name="File">Name of the old file.</param>
/// <param name="SourceSha256">SHA-256 of the old file.</param>
/// <param name="Out">Name of the new file.</param>
/// <param name="Sha256">SHA-256 of the new file.</param>
/// <param name="Person">What stands for the person; empty where no Patient ID was stated.</param>
/// <param name="Removed">Attributes removed.</param>
/// <param name="Emptied">Values emptied or replaced by a dummy.</param>
/// <param name="Replaced">Identifiers replaced.</param>
/// <param name="MaskedPixels">Pixels of a frame that were blackened.</param>
public sealed record CleanedRow(string File, string SourceSha256, string Out, string Sha256, string Person, int Removed, int Emptied, int Replaced, int MaskedPixels);
