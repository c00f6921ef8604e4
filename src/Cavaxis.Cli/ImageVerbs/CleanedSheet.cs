using Cavaxis.Dicom.Cautions;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image clean</c> tells.</summary>
/// <param name="Profile">By which profile.</param>
/// <param name="LeadsBack">True where a key was given with which the hash leads back.</param>
/// <param name="Files">The new files.</param>
/// <param name="LeftOut">Files that were not cleaned.</param>
/// <param name="Cautions">What is left to look at.</param>
public sealed record CleanedSheet(string Profile, bool LeadsBack, IReadOnlyList<CleanedRow> Files, IReadOnlyList<LeftOutFile> LeftOut, IReadOnlyList<ImageCaution> Cautions);
