using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Angles of the caval veins, degrees: positive where the way down turns to the patient's right (frontal) or to the back (sagittal).</summary>
/// <param name="SvcToTrunkFrontalDeg">SVC against the line between the mouths, frontal.</param>
/// <param name="SvcToTrunkSagittalDeg">The same, sagittal.</param>
/// <param name="TrunkToIvcFrontalDeg">That line against the IVC, frontal.</param>
/// <param name="TrunkToIvcSagittalDeg">The same, sagittal.</param>
/// <param name="BendFrontalDeg">SVC against IVC, frontal.</param>
/// <param name="BendSagittalDeg">The same, sagittal.</param>
/// <param name="BendSdDeg">Error of a bend.</param>
/// <param name="MouthOffsetMm">Sideways distance of the mouths, mm.</param>
public sealed record AxisAngleRow(
    double SvcToTrunkFrontalDeg,
    double SvcToTrunkSagittalDeg,
    double TrunkToIvcFrontalDeg,
    double TrunkToIvcSagittalDeg,
    double BendFrontalDeg,
    double BendSagittalDeg,
    double BendSdDeg,
    double MouthOffsetMm)
{
    /// <summary>Of directions.</summary>
    /// <param name="d">The directions.</param>
    internal static AxisAngleRow Of(CavalDirections d) => new(
        d.SvcToTrunkFrontalDeg, d.SvcToTrunkSagittalDeg, d.TrunkToIvcFrontalDeg, d.TrunkToIvcSagittalDeg, d.BendFrontalDeg, d.BendSagittalDeg, d.BendSdDeg, d.MouthOffsetMm);
}
