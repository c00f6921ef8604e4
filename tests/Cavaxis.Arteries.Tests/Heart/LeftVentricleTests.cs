using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Heart;
using Cavaxis.Arteries.Network;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Tests.Heart;

public class LeftVentricleTests
{
    private static readonly SettledState Adult = CirculationSimulator.SettleForComparison([CirculationParameters.Adult])[0];

    [Fact]
    public void The_valve_stays_shut_against_a_pressure_above_the_ventricles() => Assert.Equal(0, Ejected(400));

    [Fact]
    public void The_ventricle_ejects_less_against_a_higher_pressure()
    {
        double[] ejected = [.. new[] { 50.0, 80, 110, 140 }.Select(Ejected)];
        Assert.All(ejected.Zip(ejected.Skip(1)), static pair => Assert.True(pair.Second < pair.First));
        Assert.InRange(ejected[1], 40, 140);
    }

    [Fact]
    public void Volume_changes_by_what_flows_in_less_what_is_ejected()
    {
        LeftVentricle heart = Beat(80, 6);
        Assert.InRange(heart.VolumeMl, 60, 220);
        Assert.True(heart.EjectedMl > 0);
    }

    /// <summary>Stroke volume of the sixth beat into a wide aorta that holds its pressure, mL.</summary>
    private static double Ejected(double pressureMmHg) => Beat(pressureMmHg, 6).EjectedMl - Beat(pressureMmHg, 5).EjectedMl;

    private static LeftVentricle Beat(double pressureMmHg, int beats)
    {
        FillingRecord filling = ClosedLoopBeat.Filling(Adult);
        LeftVentricle heart = new(new VentricleNumbers(CirculationParameters.Adult, filling.PeriodS), filling);
        double reference = 10_000;
        double stiffness = TubeLaw.Stiffness(0.02, 0.002, 1e6);
        double root = Math.Sqrt(TubeLaw.Area(0.02)) + (((pressureMmHg * UnitFactors.PascalsPerMmHg) - reference) / stiffness);
        VesselEnd end = new(root * root, 0, stiffness, reference - (stiffness * Math.Sqrt(TubeLaw.Area(0.02))), 0, 1060);
        const int Steps = 2000;
        double step = filling.PeriodS / Steps;
        for (int i = 0; i < beats * Steps; i++)
        {
            heart.FlowOut(end, i * step, step);
        }

        return heart;
    }
}
