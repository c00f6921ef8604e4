using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Directions of SVC and IVC and the line between their mouths, in the terms of the population model (Anatomy/Axis/AxisDimension): a bend is the
/// angle from the SVC to the IVC axis, positive where the way down turns to the patient's right (frontal) or back (sagittal).
/// </summary>
/// <param name="Svc">Direction of the SVC above its mouth.</param>
/// <param name="Ivc">Direction of the IVC below its mouth.</param>
/// <param name="Trunk">From the superior to the inferior mouth, mm.</param>
public sealed record CavalDirections(VesselDirection Svc, VesselDirection Ivc, Vector3D Trunk)
{
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>The line between the mouths as a direction.</summary>
    public VesselDirection TrunkDirection => new(Trunk.Unit, 0, Trunk.Length);

    /// <summary>SVC against the trunk line, frontal, degrees.</summary>
    public double SvcToTrunkFrontalDeg => TrunkDirection.FrontalDeg - Svc.FrontalDeg;

    /// <summary>SVC against the trunk line, sagittal, degrees.</summary>
    public double SvcToTrunkSagittalDeg => TrunkDirection.SagittalDeg - Svc.SagittalDeg;

    /// <summary>Trunk line against the IVC, frontal, degrees.</summary>
    public double TrunkToIvcFrontalDeg => Ivc.FrontalDeg - TrunkDirection.FrontalDeg;

    /// <summary>Trunk line against the IVC, sagittal, degrees.</summary>
    public double TrunkToIvcSagittalDeg => Ivc.SagittalDeg - TrunkDirection.SagittalDeg;

    /// <summary>SVC against IVC, frontal, degrees.</summary>
    public double BendFrontalDeg => Ivc.FrontalDeg - Svc.FrontalDeg;

    /// <summary>SVC against IVC, sagittal, degrees.</summary>
    public double BendSagittalDeg => Ivc.SagittalDeg - Svc.SagittalDeg;

    /// <summary>Angle between both axes in space, degrees; 0 is collinear.</summary>
    public double BendDeg => Math.Acos(Math.Clamp(Svc.Towards.Dot(Ivc.Towards), -1, 1)) * DegreesPerRadian;

    /// <summary>Error of a bend as a standard deviation, degrees.</summary>
    public double BendSdDeg => Math.Sqrt((Svc.SdDeg * Svc.SdDeg) + (Ivc.SdDeg * Ivc.SdDeg));

    /// <summary>Sideways distance of the mouths square to the bisector of the axes, frontal plane, mm, positive to the patient's right.</summary>
    public double MouthOffsetMm
    {
        get
        {
            double bisector = (Svc.FrontalDeg + Ivc.FrontalDeg) / 2;
            double length = Math.Sqrt((Trunk.X * Trunk.X) + (Trunk.Z * Trunk.Z));
            return length * Math.Sin((TrunkDirection.FrontalDeg - bisector) / DegreesPerRadian);
        }
    }
}
