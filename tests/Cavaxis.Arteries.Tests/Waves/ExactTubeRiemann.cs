namespace Cavaxis.Arteries.Tests.Waves;

/// <summary>
/// Exact solution of the Riemann problem of A_t + (AU)_x = 0, U_t + (U²/2 + P/ρ)_x = 0 with P = K (√A − √A0): rarefactions keep U ± 4c, c² = K √A/(2ρ); across a shock
/// mass and the second balance jump together, which gives (ΔU)² = 2 ΔA ΔP/(ρ (A + A*)). Written for the test, by bisection, from nothing of the program.
/// </summary>
internal sealed class ExactTubeRiemann(double leftArea, double leftVelocity, double rightArea, double rightVelocity, double stiffness, double density)
{
    private double StarArea { get; } = Star(leftArea, leftVelocity, rightArea, rightVelocity, stiffness, density);

    public double StarVelocity => leftVelocity - Change(StarArea, leftArea, stiffness, density);

    /// <summary>Area and velocity at place over time.</summary>
    public (double Area, double Velocity) At(double speed)
    {
        double star = StarArea, velocity = StarVelocity;
        double fromLeft = Front(leftArea, leftVelocity, star, velocity, -1), tail = velocity - Speed(star);
        if (star <= leftArea && speed < tail)
        {
            return speed < leftVelocity - Speed(leftArea) ? (leftArea, leftVelocity) : Fan(speed, leftVelocity + (4 * Speed(leftArea)), 1);
        }

        if (star > leftArea && speed < fromLeft)
        {
            return (leftArea, leftVelocity);
        }

        double fromRight = Front(rightArea, rightVelocity, star, velocity, 1), head = velocity + Speed(star);
        if (star <= rightArea && speed > head)
        {
            return speed > rightVelocity + Speed(rightArea) ? (rightArea, rightVelocity) : Fan(speed, rightVelocity - (4 * Speed(rightArea)), -1);
        }

        return star > rightArea && speed > fromRight ? (rightArea, rightVelocity) : (star, velocity);
    }

    private static double Star(double leftArea, double leftVelocity, double rightArea, double rightVelocity, double stiffness, double density)
    {
        double low = 1e-3 * Math.Min(leftArea, rightArea), high = 100 * Math.Max(leftArea, rightArea);
        for (int i = 0; i < 200; i++)
        {
            double area = 0.5 * (low + high);
            double misfit = Change(area, leftArea, stiffness, density) + Change(area, rightArea, stiffness, density) + rightVelocity - leftVelocity;
            (low, high) = misfit < 0 ? (area, high) : (low, area);
        }

        return 0.5 * (low + high);
    }

    private static double Change(double star, double side, double stiffness, double density) => star <= side
        ? 4 * (Celerity(star, stiffness, density) - Celerity(side, stiffness, density))
        : Math.Sqrt(2 * (star - side) * stiffness * (Math.Sqrt(star) - Math.Sqrt(side)) / (density * (star + side)));

    private static double Celerity(double area, double stiffness, double density) => Math.Sqrt(stiffness * Math.Sqrt(area) / (2 * density));

    private static double Front(double area, double velocity, double star, double starVelocity, int direction) =>
        star > area ? ((star * starVelocity) - (area * velocity)) / (star - area) : velocity + (direction * 1e300);

    private double Speed(double area) => Celerity(area, stiffness, density);

    // Inside a fan: U ± 4c known, U ∓ c = x/t.
    private (double Area, double Velocity) Fan(double speed, double invariant, int side)
    {
        double c = side * (invariant - speed) / 5;
        return (Math.Pow(c * c * 2 * density / stiffness, 2), speed + (side * c));
    }
}
