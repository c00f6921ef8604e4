namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>
/// Sums over the members of a group of signs from which the density of all of them together follows: a multivariate Student density with the
/// same correlation between any two members (a matrix with one correlation has a closed inverse and determinant).
/// </summary>
/// <param name="Correlation">Correlation within the group.</param>
/// <param name="Count">Members so far.</param>
/// <param name="Sum">Sum of the standardised residuals, each with its direction.</param>
/// <param name="Squares">Sum of their squares.</param>
/// <param name="LogScales">Sum of the logarithms of the scales.</param>
internal readonly record struct GroupTally(double Correlation, int Count, double Sum, double Squares, double LogScales)
{
    /// <summary>
    /// Degrees of freedom of the heavy tails. Assumption: with four a reading eight spreads off costs no more than one of three and a half would under a normal
    /// density, so that one wrong reading is outvoted by two or three good ones.
    /// </summary>
    public const double Freedom = 4;

    /// <summary>The tally with one member more.</summary>
    public GroupTally With(double residual, double scale, int direction)
    {
        double z = residual / scale;
        return new GroupTally(Correlation, Count + 1, Sum + (direction * z), Squares + (z * z), LogScales + Math.Log(scale));
    }

    /// <summary>Logarithm of the density of the members together; zero without any.</summary>
    public double LogDensity()
    {
        if (Count == 0)
        {
            return 0;
        }

        double common = 1 + ((Count - 1) * Correlation);
        double distance = (Squares - (Correlation * Sum * Sum / common)) / (1 - Correlation);
        double determinant = ((Count - 1) * Math.Log(1 - Correlation)) + Math.Log(common);
        return Constant(Count) - LogScales - (0.5 * determinant) - (0.5 * (Freedom + Count) * Math.Log(1 + (distance / Freedom)));
    }

    // ln Γ((ν + n)/2) − ln Γ(ν/2) − n/2 ln(νπ) for ν = 4: Γ of whole and half numbers by its recurrence from Γ(2) = 1 and Γ(5/2) = 3√π/4.
    private static double Constant(int n)
    {
        double gamma = n % 2 == 0 ? 0 : Math.Log(0.75 * Math.Sqrt(Math.PI));
        for (double x = n % 2 == 0 ? 2 : 2.5; x < (0.5 * (Freedom + n)) - 0.25; x++)
        {
            gamma += Math.Log(x);
        }

        return gamma - (0.5 * n * Math.Log(Freedom * Math.PI));
    }
}
