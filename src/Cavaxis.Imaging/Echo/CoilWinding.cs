using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>
/// The wire wound into the wall of a cannula. No winding is published; the usual numbers here are assumptions of this project, to be replaced
/// by those of the device in hand.
/// </summary>
public sealed record CoilWinding
{
    /// <summary>A winding.</summary>
    /// <param name="wireMm">Diameter of the wound wire, 0.05 to 1 mm.</param>
    /// <param name="pitchMm">Way from turn to turn, at least 1.2 times the wire.</param>
    /// <param name="plainTipMm">Length at the tip that has no winding, 0 to 100 mm.</param>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public CoilWinding(double wireMm = 0.25, double pitchMm = 0.6, double plainTipMm = 25)
    {
        const string Remedy = "Give the winding of the device in hand.";
        WireMm = Require.InRange(wireMm, 0.05, 1, "winding.wireMm", Remedy);
        PitchMm = Require.InRange(pitchMm, 1.2 * wireMm, 10, "winding.pitchMm", Remedy);
        PlainTipMm = Require.InRange(plainTipMm, 0, 100, "winding.plainTipMm", Remedy);
    }

    /// <summary>Diameter of the wound wire, mm.</summary>
    public double WireMm { get; }

    /// <summary>Way from turn to turn, mm.</summary>
    public double PitchMm { get; }

    /// <summary>Length at the tip without winding, mm.</summary>
    public double PlainTipMm { get; }

    /// <summary>Share of the wall that the wire covers.</summary>
    public double Cover => WireMm / PitchMm;

    /// <summary>Loss of the pressure on one way through the winding, dB: the covered share is thrown back.</summary>
    public double LossDb => -20 * Math.Log10(1 - (MaterialTable.SteelReflection * Cover));
}
