using Cavaxis.Blood.CarbonDioxide;

namespace Cavaxis.Planning.Running;

/// <summary>
/// Least-squares fit of the circulation's carbon dioxide curve to the content of Douglas et al. at constant base excess, over tensions of 20 to
/// 90 mmHg and saturations of 0.4 to 1 at 37 °C.
/// </summary>
public static class CarbonDioxideCurve
{
    private const double LowestMmHg = 20;
    private const double HighestMmHg = 90;
    private const double StepMmHg = 5;
    private const double LowestSaturation = 0.4;
    private const int Rounds = 40;

    /// <summary>Fits the curve.</summary>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 24 g/dL.</param>
    /// <param name="baseExcessMmolPerL">Base excess of the oxygenated blood, −30 to 30 mmol/L.</param>
    /// <returns>The coefficients with their largest error.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">A value is out of range.</exception>
    public static CarbonDioxideFit Fit(double haemoglobinGPerDl, double baseExcessMmolPerL)
    {
        List<(double Pco2, double Saturation, double Content)> points = Points(haemoglobinGPerDl, baseExcessMmolPerL);
        (double logScale, double exponent, double haldane) = (Math.Log(0.0945), 0.44, 0.06);

        // Gauss-Newton on the contents themselves; the model is so near to linear in these three that it converges from the table's values.
        for (int round = 0; round < Rounds; round++)
        {
            double[,] normal = new double[3, 3];
            double[] right = new double[3];
            foreach ((double pco2, double saturation, double content) in points)
            {
                double free = 1 - saturation;
                double value = Math.Exp(logScale) * Math.Pow(pco2, exponent) * (1 + (haldane * free));
                double[] slope = [value, value * Math.Log(pco2), value * free / (1 + (haldane * free))];
                for (int i = 0; i < 3; i++)
                {
                    right[i] += slope[i] * (content - value);
                    for (int j = 0; j < 3; j++)
                    {
                        normal[i, j] += slope[i] * slope[j];
                    }
                }
            }

            double[] step = Solve(normal, right);
            (logScale, exponent, haldane) = (logScale + step[0], exponent + step[1], haldane + step[2]);
        }

        double scale = Math.Exp(logScale);
        double worst = points.Max(p => Math.Abs((scale * Math.Pow(p.Pco2, exponent) * (1 + (haldane * (1 - p.Saturation)))) - p.Content));
        return new CarbonDioxideFit(scale, exponent, haldane, baseExcessMmolPerL, 100 * worst, points.Min(p => p.Pco2), points.Max(p => p.Pco2));
    }

    // Tensions whose pH would lie outside 6.5 to 7.7, where the content is not defined, are left out.
    private static List<(double Pco2, double Saturation, double Content)> Points(double haemoglobin, double baseExcess)
    {
        List<(double, double, double)> points = [];
        for (double pco2 = LowestMmHg; pco2 <= HighestMmHg; pco2 += StepMmHg)
        {
            for (int i = 0; i <= 6; i++)
            {
                double saturation = LowestSaturation + (0.1 * i);
                if (pco2 > BaseExcess.Pco2At(7.7, baseExcess, haemoglobin, saturation) && pco2 < BaseExcess.Pco2At(6.5, baseExcess, haemoglobin, saturation))
                {
                    double pH = BaseExcess.PhAt(pco2, baseExcess, haemoglobin, saturation);
                    points.Add((pco2, saturation, CarbonDioxideContent.MlPerDl(pco2, pH, haemoglobin, saturation, 37) / 100));
                }
            }
        }

        return points;
    }

    /// <summary>Three equations by Cramer's rule.</summary>
    private static double[] Solve(double[,] m, double[] r)
    {
        double whole = Determinant(m);
        double[] x = new double[3];
        for (int column = 0; column < 3; column++)
        {
            double[,] replaced = (double[,])m.Clone();
            for (int row = 0; row < 3; row++)
            {
                replaced[row, column] = r[row];
            }

            x[column] = Determinant(replaced) / whole;
        }

        return x;
    }

    private static double Determinant(double[,] m) =>
        (m[0, 0] * ((m[1, 1] * m[2, 2]) - (m[1, 2] * m[2, 1])))
        - (m[0, 1] * ((m[1, 0] * m[2, 2]) - (m[1, 2] * m[2, 0])))
        + (m[0, 2] * ((m[1, 0] * m[2, 1]) - (m[1, 1] * m[2, 0])));
}
