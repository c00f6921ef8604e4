using System.Globalization;
using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Xunit.Abstractions;

namespace Cavaxis.Arteries.Tests.Waves;

public class RiemannProblemTests(ITestOutputHelper output)
{
    private const double Density = 1060;
    private const double Radius = 0.01;
    private static readonly ArterialSegment Tube = new("tube", "in", "out", 1, Radius, Radius, 0.001, 0.001, 400e3, 0);

    [Theory]
    [InlineData(1.5, 0, 1, 0)]
    [InlineData(1, 1.0, 1, -1.0)]
    [InlineData(1, -1.0, 1, 1.0)]
    [InlineData(1.3, 1.2, 0.8, 0.4)]
    public void Two_states_side_by_side_part_into_the_exact_waves(double left, double leftVelocity, double right, double rightVelocity)
    {
        double[] errors = [.. ((int[])[200, 400, 800]).Select(cells => Error(cells, left, leftVelocity, right, rightVelocity))];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"mean error of area {100 * errors[0]:F3}, {100 * errors[1]:F3}, {100 * errors[2]:F3} % of the reference area"));
        Assert.InRange(errors[2], 0, 0.0025);
        Assert.InRange(errors[0] / errors[2], 2, 20);
    }

    private static double Error(int cells, double left, double leftVelocity, double right, double rightVelocity)
    {
        const double Time = 0.03;
        double reference = TubeLaw.Area(Radius);
        ArterialSimulation simulation = new(new ArterialSetup(
            new([Tube], new BloodFluid(Density, 0, 9)), [new("in", new NonReflectingEnd(0)), new("out", new NonReflectingEnd(0))], 0)
        { CellLength = 1.0 / cells });
        CellGrid grid = simulation.Grid;
        for (int i = 0; i < cells; i++)
        {
            simulation.State.Area[grid.Start[0] + i] = reference * (i < cells / 2 ? left : right);
            simulation.State.Velocity[grid.Start[0] + i] = i < cells / 2 ? leftVelocity : rightVelocity;
        }

        ExactTubeRiemann exact = new(reference * left, leftVelocity, reference * right, rightVelocity, Tube.Stiffness(0), Density);
        simulation.Advance(Time);

        // The ends answer states that are not at rest with waves of their own: what they reach in this time is left out.
        return Enumerable.Range(cells / 4, cells / 2).Average(i =>
            Math.Abs(simulation.State.Area[grid.Start[0] + i] - exact.At(((((i + 0.5) / cells) - 0.5) / Time)).Area)) / reference;
    }
}
