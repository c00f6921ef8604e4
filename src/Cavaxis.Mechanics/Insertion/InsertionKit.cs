using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>The devices of one insertion.</summary>
public sealed record InsertionKit
{
    /// <summary>Makes a kit.</summary>
    /// <param name="wire">The guide wire.</param>
    /// <param name="cannula">The cannula; null for a wire alone.</param>
    /// <param name="introducer">The introducer inside it; null for none.</param>
    /// <param name="introducerLeadMm">How far its tip stands out of the cannula's, mm.</param>
    /// <exception cref="InputFaultException">Lead out of range.</exception>
    public InsertionKit(RodProfile wire, RodProfile? cannula = null, RodProfile? introducer = null, double introducerLeadMm = 0)
    {
        ArgumentNullException.ThrowIfNull(wire);
        IntroducerLeadMm = Require.InRange(introducerLeadMm, 0, 500, "kit.introducerLeadMm", "Give the length of introducer before the cannula's tip in mm.");
        (Wire, Cannula, Introducer) = (wire, cannula, introducer);
    }

    /// <summary>The guide wire.</summary>
    public RodProfile Wire { get; }

    /// <summary>The cannula.</summary>
    public RodProfile? Cannula { get; }

    /// <summary>The introducer.</summary>
    public RodProfile? Introducer { get; }

    /// <summary>How far the introducer's tip stands out of the cannula's, mm.</summary>
    public double IntroducerLeadMm { get; }

    /// <summary>Profile of a device.</summary>
    /// <param name="device">Device.</param>
    /// <returns>Null where the kit has none.</returns>
    public RodProfile? Of(Device device) => device switch
    {
        Device.Wire => Wire,
        Device.Introducer => Introducer,
        _ => Cannula,
    };
}
