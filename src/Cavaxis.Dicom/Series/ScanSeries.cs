using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Headers;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Dicom.Series;

/// <summary>A series of slices of computed tomography as one volume.</summary>
/// <param name="Volume">The volume in Hounsfield units, slices in the order of their place along the normal of the first.</param>
/// <param name="Header">What the first slice says about itself.</param>
/// <param name="Cautions">What whoever measures in it must know; what several slices share stands once.</param>
/// <param name="Sha256">SHA-256 over the hashes of the slices in their order: which files a measurement was made in.</param>
/// <param name="LeftOut">Names of files in the folder that are no slices.</param>
public sealed record ScanSeries(ScanVolume Volume, ImageHeader Header, IReadOnlyList<ImageCaution> Cautions, string Sha256, IReadOnlyList<string> LeftOut);
