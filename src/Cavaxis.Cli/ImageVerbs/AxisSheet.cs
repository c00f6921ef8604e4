using Cavaxis.Dicom.Cautions;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Planning.Case;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image axis</c> tells.</summary>
/// <param name="Sha256">SHA-256 over the hashes of the slices.</param>
/// <param name="SeedsFoundByProgram">True where no seed was given: that the column is the vein, a person must say.</param>
/// <param name="Failure">Why there is no axis; null where there is one.</param>
/// <param name="CourseMm">Length of the cheapest way between the seeds; null where the seeds were refused.</param>
/// <param name="LengthMm">Length of the centreline, mm; null without an axis.</param>
/// <param name="DiameterSdMm">Error of one diameter, mm.</param>
/// <param name="Landmarks">Landmarks, found or not.</param>
/// <param name="Angles">Angles; null where a junction is missing.</param>
/// <param name="Diameters">The calibre along the line.</param>
/// <param name="Measurements">What goes into a case.</param>
/// <param name="Quality">What the axis was held against.</param>
/// <param name="TraceCautions">What to look at before the axis is used.</param>
/// <param name="Pictures">Names of the pictures written.</param>
/// <param name="Cautions">What to beware of in the files.</param>
public sealed record AxisSheet(
    string Sha256,
    bool SeedsFoundByProgram,
    TraceFailure? Failure,
    double? CourseMm,
    double? LengthMm,
    double? DiameterSdMm,
    IReadOnlyList<AxisLandmarkRow> Landmarks,
    AxisAngleRow? Angles,
    IReadOnlyList<AxisDiameterRow> Diameters,
    IReadOnlyList<AxisEntry> Measurements,
    TraceQuality? Quality,
    IReadOnlyList<TraceCaution> TraceCautions,
    IReadOnlyList<string> Pictures,
    IReadOnlyList<ImageCaution> Cautions);
