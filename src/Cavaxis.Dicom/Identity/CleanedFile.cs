using Cavaxis.Dicom.Cautions;

namespace Cavaxis.Dicom.Identity;

/// <summary>What was done to a file.</summary>
/// <param name="Path">The new file.</param>
/// <param name="Sha256">Its SHA-256.</param>
/// <param name="SourceSha256">SHA-256 of the old one.</param>
/// <param name="Person">What stands for the person: a keyed hash of the Patient ID; empty where there was none.</param>
/// <param name="Removed">Attributes removed.</param>
/// <param name="Emptied">Values emptied or replaced by a dummy.</param>
/// <param name="Replaced">Identifiers replaced.</param>
/// <param name="MaskedPixels">Pixels of a frame that were blackened.</param>
/// <param name="Cautions">What is left to look at.</param>
public sealed record CleanedFile(
    string Path, string Sha256, string SourceSha256, string Person, int Removed, int Emptied, int Replaced, int MaskedPixels, IReadOnlyList<ImageCaution> Cautions);
