namespace Cavaxis.Devices.Cannulae;

/// <summary>
/// A bench curve in reduced variables, so that it can be carried over to another liquid by Reynolds similarity: ln Eu is a
/// polynomial of ln Re, with Eu = ΔP/(ρV²), Re = ρVD/μ, D the reference diameter and V = 4Q/(πD²). Two liquids at the same Re
/// have the same Eu in the same cannula; no constant factor between them is assumed. See <c>docs/models/devices.md</c>.
/// </summary>
/// <param name="ReferenceDiameterMm">Diameter that made the variables dimensionless.</param>
/// <param name="EulerLogCoefficients">Coefficients, lowest order first, of ln Eu against ln Re; at least two.</param>
/// <param name="LowestReynolds">Lowest Reynolds number on the bench.</param>
/// <param name="HighestReynolds">Highest Reynolds number on the bench.</param>
/// <param name="RelativeSd">Relative scatter of the bench points about the fit.</param>
public sealed record WaterCurve(
    double ReferenceDiameterMm,
    IReadOnlyList<double> EulerLogCoefficients,
    double LowestReynolds,
    double HighestReynolds,
    double RelativeSd)
{
    // Beyond the bench the slope of ln Eu may turn out anywhere between -1 (laminar) and 0 (inertial): a uniform spread of √(1/12).
    private const double SlopeSdBeyond = 0.2887;

    // The ends of the range are exponentials of logarithms of the outermost points; rounding must not put those points outside.
    private const double Rounding = 1e-9;

    // Viscosity of the liquid is known to about a tenth; its weight is the local slope of the curve.
    private const double ViscositySd = 0.1;

    /// <summary>True when the Reynolds number was reached on the bench.</summary>
    /// <param name="reynolds">Reynolds number on the reference diameter.</param>
    /// <returns>Whether the curve covers it.</returns>
    public bool Covers(double reynolds) => reynolds >= LowestReynolds * (1 - Rounding) && reynolds <= HighestReynolds * (1 + Rounding);

    /// <summary>Euler number. Beyond the bench the curve goes on straight in logarithms, its slope held between -1 and 0.</summary>
    /// <param name="reynolds">Reynolds number on the reference diameter, positive.</param>
    /// <returns>ΔP/(ρV²).</returns>
    public double EulerAt(double reynolds)
    {
        double inside = Math.Clamp(reynolds, LowestReynolds, HighestReynolds);
        double log = Polynomial(Math.Log(inside));
        return Math.Exp(inside == reynolds ? log : log + (Math.Clamp(SlopeAt(inside), -1, 0) * Math.Log(reynolds / inside)));
    }

    /// <summary>Slope d ln Eu / d ln Re of the fitted curve; -1 is laminar, -1/4 smooth turbulent, 0 inertial.</summary>
    /// <param name="reynolds">Reynolds number on the reference diameter, positive.</param>
    /// <returns>The slope.</returns>
    public double SlopeAt(double reynolds)
    {
        double x = Math.Log(reynolds);
        double slope = 0;
        for (int i = EulerLogCoefficients.Count - 1; i >= 1; i--)
        {
            slope = (slope * x) + (i * EulerLogCoefficients[i]);
        }

        return slope;
    }

    /// <summary>Relative standard deviation of a drop: bench scatter, viscosity and, beyond the bench, the unknown slope.</summary>
    /// <param name="reynolds">Reynolds number on the reference diameter, positive.</param>
    /// <returns>Relative standard deviation.</returns>
    public double RelativeSdAt(double reynolds)
    {
        double inside = Math.Clamp(reynolds, LowestReynolds, HighestReynolds);
        double viscosity = ViscositySd * Math.Clamp(SlopeAt(inside), -1, 0);
        double beyond = SlopeSdBeyond * Math.Log(reynolds / inside);
        return Math.Sqrt((RelativeSd * RelativeSd) + (viscosity * viscosity) + (beyond * beyond));
    }

    private double Polynomial(double x)
    {
        double value = 0;
        for (int i = EulerLogCoefficients.Count - 1; i >= 0; i--)
        {
            value = (value * x) + EulerLogCoefficients[i];
        }

        return value;
    }
}
