using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Insertion;

/// <summary>One cannula that is to be brought into the veins over a wire.</summary>
/// <param name="Role">What it does.</param>
/// <param name="Cannula">The device.</param>
/// <param name="Side">Side of the body.</param>
/// <param name="FromNeck">True from the neck, false from the groin.</param>
/// <param name="DepthMm">Depth of its tip from the skin.</param>
/// <param name="Wire">Class of wire.</param>
/// <param name="WireDeeperMm">How much deeper the wire is fed than to its usual place; negative for less.</param>
internal sealed record InsertionTask(
    CannulaRole Role, Cannula Cannula, BodySide Side, bool FromNeck, double DepthMm, WireClass Wire, double WireDeeperMm = 0)
{
    /// <summary>Length of introducer before the cannula's tip, mm (assumption).</summary>
    public const double IntroducerLeadMm = 40;

    /// <summary>The wire always stands out of the introducer by at least this, mm.</summary>
    private const double WireLeadMm = 30;

    /// <summary>Bending stiffness of the cannula: the catalogue's range, or any cannula's where it has none.</summary>
    public StiffnessRange Stiffness => Cannula.BendingStiffnessNMm2 ?? InsertionUnknowns.AnyCannula;

    /// <summary>Where it goes through the skin.</summary>
    public SkinSite Site => (FromNeck, Side) switch
    {
        (true, BodySide.Right) => SkinSite.RightNeck,
        (true, _) => SkinSite.LeftNeck,
        (false, BodySide.Right) => SkinSite.RightGroin,
        _ => SkinSite.LeftGroin,
    };

    /// <summary>
    /// Length of wire that reaches its usual place in an anatomy, where it runs straight there: from the neck the middle of the IVC below the renal
    /// veins, from the groin three quarters of the way up the SVC (common practice, no source). It is fed under imaging, so the length suits each anatomy.
    /// </summary>
    /// <param name="axis">The anatomy.</param>
    public double WireMm(CavalAxis axis)
    {
        double target = FromNeck
            ? (axis[CavalLandmark.RenalVein] + axis[CavalLandmark.IliacConfluence]) / 2
            : 0.75 * axis[CavalLandmark.BrachiocephalicConfluence];
        double length = FromNeck ? target - axis.FromNeck(Side, 0) : axis.FromGroin(Side, 0) - target;
        return Math.Max(length + WireDeeperMm, DepthMm + IntroducerLeadMm + WireLeadMm);
    }
}
