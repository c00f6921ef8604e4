using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Axis;

/// <summary>Where the nine parts on the line begin and end, in mm of arc length; the vestibule lies beside the line.</summary>
public sealed class AxisGrid
{
    /// <summary>The parts on the line from head to feet.</summary>
    private static readonly AxisCell[] Order =
    [
        AxisCell.UpperSuperiorCava, AxisCell.LowerSuperiorCava, AxisCell.UpperAtrium, AxisCell.MiddleAtrium, AxisCell.LowerAtrium,
        AxisCell.ThoracicCava, AxisCell.HepaticCava, AxisCell.RenalCava, AxisCell.LowerCava,
    ];

    private readonly double[] joints;

    private AxisGrid(double[] joints, double tricuspid) => (this.joints, TricuspidMm) = (joints, tricuspid);

    /// <summary>Position of the centre of the tricuspid valve, mm.</summary>
    public double TricuspidMm { get; }

    /// <summary>From an anatomy.</summary>
    /// <param name="axis">The anatomy.</param>
    /// <returns>The grid.</returns>
    /// <exception cref="InputFaultException">The landmarks are not in order.</exception>
    public static AxisGrid Of(CavalAxis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        return Of(
            axis[CavalLandmark.BrachiocephalicConfluence], axis[CavalLandmark.TricuspidCentre], axis[CavalLandmark.Icaj],
            axis[CavalLandmark.HepaticVein], axis[CavalLandmark.RenalVein], axis[CavalLandmark.IliacConfluence]);
    }

    /// <summary>From positions in mm, head to feet, with the superior cavo-atrial junction at zero.</summary>
    /// <param name="confluenceMm">Brachiocephalic confluence, below zero.</param>
    /// <param name="tricuspidMm">Tricuspid centre.</param>
    /// <param name="icajMm">Inferior cavo-atrial junction.</param>
    /// <param name="hepaticMm">Hepatic veins.</param>
    /// <param name="renalMm">Renal veins.</param>
    /// <param name="iliacMm">Iliac confluence.</param>
    /// <returns>The grid.</returns>
    /// <exception cref="InputFaultException">The positions are not in order.</exception>
    public static AxisGrid Of(double confluenceMm, double tricuspidMm, double icajMm, double hepaticMm, double renalMm, double iliacMm)
    {
        const string Remedy = "Give the landmarks in order from head to feet.";
        Require.InRange(confluenceMm, -500, -1e-3, "confluenceMm", Remedy);
        Require.InRange(icajMm, 1e-3, 500, "icajMm", Remedy);
        Require.InRange(tricuspidMm, 0, icajMm, "tricuspidMm", Remedy);
        Require.InRange(hepaticMm, icajMm, 1000, "hepaticMm", Remedy);
        Require.InRange(renalMm, hepaticMm, 1000, "renalMm", Remedy);
        Require.InRange(iliacMm, renalMm, 2000, "iliacMm", Remedy);

        // Atrial parts by their volumes on the line: 0.25, 0.35 and 0.20 of the atrium.
        return new AxisGrid(
            [0.5 * confluenceMm, 0, 0.3125 * icajMm, 0.75 * icajMm, icajMm, hepaticMm, 0.5 * (hepaticMm + renalMm), 0.5 * (renalMm + iliacMm)],
            tricuspidMm);
    }

    /// <summary>Spreads an amount evenly over a stretch of the line.</summary>
    /// <param name="fromMm">Head end.</param>
    /// <param name="toMm">Feet end, beyond the head end.</param>
    /// <param name="amount">The amount.</param>
    /// <param name="shares">Ten shares, added to.</param>
    internal void Spread(double fromMm, double toMm, double amount, Span<double> shares)
    {
        for (int i = 0; i < Order.Length; i++)
        {
            double low = i == 0 ? double.NegativeInfinity : joints[i - 1];
            double high = i == joints.Length ? double.PositiveInfinity : joints[i];
            double overlap = Math.Min(high, toMm) - Math.Max(low, fromMm);
            shares[(int)Order[i]] += amount * Math.Max(0, overlap) / (toMm - fromMm);
        }
    }
}
