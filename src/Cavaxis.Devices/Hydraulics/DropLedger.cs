namespace Cavaxis.Devices.Hydraulics;

/// <summary>
/// Splits a pressure drop into what causes it, so that its spread follows from the spread of bore, holes, correlations and
/// viscosity. Parameters and their sources: <c>docs/models/devices.md</c>.
/// </summary>
internal struct DropLedger
{
    // Scatter of smooth-tube data about Blasius and Colebrook; the two differ by up to 3 % between 4000 and 80 000.
    private const double FrictionSd = 0.04;

    // Handbook loss coefficients carry about a fifth.
    private const double LossSd = 0.2;

    // Blood of known haematocrit and temperature is known in viscosity to about a tenth.
    private const double ViscositySd = 0.1;

    private double friction;
    private double viscous;
    private double critical;
    private double fittings;
    private double holes;

    /// <summary>Largest Reynolds number met.</summary>
    internal double LargestReynolds { get; private set; }

    /// <summary>Adds the friction of a stretch.</summary>
    internal void AddFriction(double dropPa, double reynolds, double factor)
    {
        friction += dropPa;
        double laminar = TubeFriction.Laminar(reynolds);
        viscous += factor > laminar ? 0.25 * dropPa : dropPa;
        if (factor > laminar && reynolds < TubeFriction.TurbulentFrom)
        {
            // The true factor lies anywhere between the two branches: a uniform spread.
            critical += dropPa * (1 - (laminar / factor)) / Math.Sqrt(12);
        }

        LargestReynolds = Math.Max(LargestReynolds, reynolds);
    }

    /// <summary>Adds an inertial loss inside the bore.</summary>
    internal void AddFitting(double dropPa) => fittings += Math.Abs(dropPa);

    /// <summary>Adds the loss through the holes of the outermost row, which all the pressure must pass.</summary>
    internal void AddHoles(double dropPa) => holes += dropPa;

    /// <summary>Relative standard deviation of the whole drop.</summary>
    internal readonly double RelativeSd(GeometryTolerance tolerance)
    {
        double sum = friction + fittings + holes;
        if (sum <= 0)
        {
            return Math.Max(LossSd, tolerance.BoreRelativeSd);
        }

        double bore = ((4.75 * friction) + (4 * fittings)) / sum * tolerance.BoreRelativeSd;
        double open = 2 * holes / sum * tolerance.HoleAreaRelativeSd;
        double correlation = FrictionSd * friction / sum;
        double loss = LossSd * (fittings + holes) / sum;
        double viscosity = ViscositySd * viscous / sum;
        double zone = critical / sum;
        return Math.Sqrt((bore * bore) + (open * open) + (correlation * correlation) + (loss * loss) + (viscosity * viscosity) + (zone * zone));
    }
}
