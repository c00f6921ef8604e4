using System.Globalization;
using System.Numerics;
using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Xunit.Abstractions;

namespace Cavaxis.Arteries.Tests.Waves;

public class SinglePulseTests(ITestOutputHelper output)
{
    [Fact]
    public void A_pulse_without_friction_keeps_its_height_and_arrives_when_it_should()
    {
        ArterialSimulation simulation = SinglePulse.Simulation(0, 0.0025);
        (double time, double pressure) = SinglePulse.Highest(simulation, 2, 0.30, 0.45);
        (double later, double pressureThere) = SinglePulse.Highest(simulation, 5, 0.80, 0.92);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"2 m: {time:F5} s, {pressure:F4} Pa; 5 m: {later:F5} s, {pressureThere:F4} Pa; speed {3 / (later - time):F5} m/s"));

        // The crest of a simple wave runs at c + U + U/4: faster than a small wave by 5/4 of its velocity, Q/A = 1e-6 m³/s over π cm².
        double crest = SinglePulse.WaveSpeed + (1.25 * 1e-6 / (Math.PI * 1e-4));
        Assert.Equal(0.3740, time, 0.0006);
        Assert.Equal(0.8601, later, 0.0006);
        Assert.Equal(SinglePulse.HighestPressure, pressure, 0.003 * SinglePulse.HighestPressure);
        Assert.Equal(SinglePulse.HighestPressure, pressureThere, 0.004 * SinglePulse.HighestPressure);
        Assert.Equal(crest, 3 / (later - time), 0.001);
    }

    [Theory]
    [InlineData(9, 0.712)]
    [InlineData(2, 0.884)]
    public void A_pulse_with_friction_decays_as_the_linear_theory_says(double profile, double left)
    {
        (_, double free) = SinglePulse.Highest(SinglePulse.Simulation(0, 0.0025), 5, 0.80, 0.92);
        (_, double damped) = SinglePulse.Highest(SinglePulse.Simulation(0.004, 0.0025, profile), 5, 0.80, 0.92);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"left at 5 m {damped / free:F4}, theory {left}"));
        Assert.Equal(left, damped / free, 0.004);
    }

    [Fact]
    public void Nothing_comes_back_from_an_end_that_does_not_reflect()
    {
        ArterialSimulation simulation = SinglePulse.Simulation(0, 0.005);
        simulation.Advance(1.2);
        Assert.InRange(simulation.Pressure(simulation.Locate(new("tube", 7.1))), 18, 21);
        simulation.Advance(1.0);
        foreach (double place in (double[])[1, 5, 9])
        {
            Assert.InRange(Math.Abs(simulation.Pressure(simulation.Locate(new("tube", place)))), 0, 0.01);
        }
    }

    [Fact]
    public void A_viscous_wall_damps_a_wave_as_its_complex_modulus_says()
    {
        const double Frequency = 10 * Math.PI, WallViscosity = 1000;
        const double From = 1, To = 3;
        ArterialSimulation simulation = new(new ArterialSetup(
            new([new("tube", "in", "out", 10, 0.01, 0.01, 0.0015, 0.0015, 400e3, 0, WallViscosity)], new BloodFluid(1050, 0, 9)),
            [new("in", new FlowInlet(static t => 1e-7 * Math.Sin(Frequency * t) * Math.Min(1, 5 * t))), new("out", new NonReflectingEnd(0))],
            0)
        { CellLength = 0.01 });
        simulation.Advance(1.2);
        ArterialProbe near = simulation.Locate(new("tube", From)), far = simulation.Locate(new("tube", To));
        double atNear = 0, atFar = 0;
        while (simulation.Time < 1.6)
        {
            simulation.Advance(0.001);
            atNear = Math.Max(atNear, simulation.Flow(near));
            atFar = Math.Max(atFar, simulation.Flow(far));
        }

        // Modulus E (1 + i w phi/E): k = (w/c)/sqrt(1 + i w phi/E), the part left over 2 m is exp(2 Im k).
        Complex k = Frequency / SinglePulse.WaveSpeed / Complex.Sqrt(new Complex(1, Frequency * WallViscosity / 400e3));
        Assert.Equal(Math.Exp(2 * k.Imaginary), atFar / atNear, 0.005);
    }

    [Fact]
    public void The_error_falls_with_the_square_of_the_cell_length()
    {
        // Exact up to the small steepening of the wave, which is the same on all grids: errors are taken against the finest grid by Richardson's ratio.
        double[][] runs = [.. ((double[])[0.02, 0.01, 0.005, 0.0025]).Select(Profile)];
        double[] differences = [.. runs.Zip(runs.Skip(1), static (coarse, fine) => coarse.Zip(fine, static (a, b) => Math.Abs(a - b)).Sum())];
        double[] orders = [.. differences.Zip(differences.Skip(1), static (coarse, fine) => Math.Log2(coarse / fine))];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"orders {orders[0]:F3}, {orders[1]:F3}"));
        Assert.InRange(orders[0], 1.7, 2.8);
        Assert.InRange(orders[1], 1.8, 2.8);
    }

    private static double[] Profile(double cellLength)
    {
        ArterialSimulation simulation = SinglePulse.Simulation(0.004, cellLength);
        simulation.Advance(0.4);
        return [.. Enumerable.Range(0, 200).Select(i => simulation.Pressure(simulation.Locate(new("tube", 0.5 + (0.02 * i)))))];
    }
}
