using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Planning.Fit;

/// <summary>
/// Where a side jet of a cannula in the right atrium meets the tricuspid plane. The cannula lies along the curve of least
/// bending between the caval mouths; a jet leaves it at right angles, so the tilt of the curve towards the valve moves the
/// aim along the axis by tilt times distance (<c>docs/models/fit.md</c>).
/// </summary>
internal readonly struct JetGeometry(
    double lengthMm,
    double spanMm,
    double bendFrontalDeg,
    double bendSagittalDeg,
    double offsetMm,
    double tricuspidFraction,
    double tricuspidDistanceMm,
    double annulusRadiusMm)
{
    private const int Halvings = 24;

    /// <summary>Position at which a jet from a port at a given position meets the tricuspid plane, mm below SCAJ along the axis.</summary>
    /// <param name="portMm">Position of the port, mm below SCAJ.</param>
    /// <returns>Aim, mm below SCAJ.</returns>
    public double AimMm(double portMm)
    {
        double fraction = portMm / lengthMm;
        double frontal = AtrialPath.SlopeAt(fraction, bendFrontalDeg, offsetMm, spanMm);
        double sagittal = AtrialPath.SlopeAt(fraction, bendSagittalDeg, 0, spanMm);
        double towardsValve = AtrialPath.SlopeTowards(frontal, sagittal, AtrialPath.TricuspidAzimuthDeg);
        return portMm + AtrialPath.AimShiftMm(towardsValve, tricuspidDistanceMm);
    }

    /// <summary>
    /// The stretch of port positions inside the atrium from which at least half of a straight jet enters the annulus, that
    /// is, from which its middle meets the annulus.
    /// </summary>
    /// <returns>Upper and lower end, mm below SCAJ; the upper end is below the lower one when there is no such position.</returns>
    public (double FromMm, double ToMm) PortWindow()
    {
        double centre = tricuspidFraction * lengthMm;
        double upperEdge = centre - annulusRadiusMm;
        double lowerEdge = centre + annulusRadiusMm;
        if (AimMm(0) > lowerEdge || AimMm(lengthMm) < upperEdge)
        {
            // No port inside the atrium aims at the annulus; both ends would fall on one end of the atrium and pass for a place.
            return (lengthMm, 0);
        }

        return (PositionAimingAt(upperEdge), PositionAimingAt(lowerEdge));
    }

    /// <summary>Half width of the rotation about the cannula within which the middle of a jet at the best height still meets the annulus.</summary>
    /// <returns>Degrees, 0 to 90.</returns>
    public double RotationWindowDeg() => Math.Atan2(annulusRadiusMm, tricuspidDistanceMm) * 180 / Math.PI;

    private double PositionAimingAt(double aimMm)
    {
        // Over the atrium the aim rises with the port wherever the bend is moderate; where it does not, bisection still
        // returns a position whose aim is right or the end of the atrium that comes closest.
        double low = 0;
        double high = lengthMm;
        if (AimMm(low) >= aimMm)
        {
            return low;
        }

        if (AimMm(high) <= aimMm)
        {
            return high;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (AimMm(middle) < aimMm)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }
}
