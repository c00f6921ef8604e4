using Cavaxis.Circulation.Parameters;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>The blood flow equations where a closed form is known.</summary>
public class BloodFlowLimitTests
{
    private const double MmHgPerCmH2O = 0.735559;

    [Theory]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(200)]
    public void A_resting_ventricle_lies_exactly_on_its_end_diastolic_curve(double volumeMl)
    {
        CirculationParameters p = CirculationParameters.Adult.With(SeptumRightToLeft, 0).With(PericardiumScaleMmHg, 0);
        MomentOfFlow moment = new(p);
        moment.Set(S.LeftVentricle, volumeMl);
        moment.Rates(0, valvesOpen: false);
        double transmural = moment.Pressure(S.LeftVentricle) - p[PleuralPressureMmHg];
        double curve = p[LeftVentricleStiffnessMmHg] * (Math.Exp(p[LeftVentricleStiffnessPerMl] * (volumeMl - p[LeftVentricleZeroVolumeMl])) - 1);
        Assert.Equal(curve, transmural, 1e-9 * Math.Max(1, curve));
    }

    [Fact]
    public void A_fully_activated_ventricle_lies_on_its_end_systolic_line()
    {
        CirculationParameters p = CirculationParameters.Adult.With(SeptumRightToLeft, 0).With(PericardiumScaleMmHg, 0)
            .With(PleuralSwingMmHg, 0).With(HeartRatePerMin, 60);
        MomentOfFlow moment = new(p);
        moment.Set(S.LeftVentricle, 75);
        moment.Rates(p[AtrioventricularDelayS] + p[VentricularRiseS], valvesOpen: false);
        double line = p[LeftVentricleElastanceMmHgPerMl] * (75 - p[LeftVentricleZeroVolumeMl]);
        Assert.Equal(line, moment.Pressure(S.LeftVentricle) - p[PleuralPressureMmHg], 1e-9 * line);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(250)]
    [InlineData(500)]
    public void Steady_flow_through_a_valve_obeys_the_orifice_equation(double flowMlPerS)
    {
        CirculationParameters p = CirculationParameters.Adult;
        MomentOfFlow moment = new(p);
        double area = p[AorticValveAreaCm2] * 1e-4;
        double speed = flowMlPerS * 1e-6 / area;
        double drop = (0.5 * 1060 * speed * speed / 133.322387415) + (p[ValveResistanceMmHgSPerMl] * flowMlPerS);

        // The ascending aorta is filled so that exactly this drop stands over the valve.
        moment.Rates(0.3, valvesOpen: true);
        double wanted = moment.Pressure(S.LeftVentricle) - drop;
        moment.Set(S.Ascending, p[AscendingZeroVolumeMl] + ((wanted - moment.Field.Pleural.Value) * p[AscendingComplianceMlPerMmHg]));
        moment.Set(S.AorticValveFlow, flowMlPerS);
        double acceleration = moment.Rates(0.3, valvesOpen: true)[S.AorticValveFlow];
        Assert.InRange(Math.Abs(acceleration * p[OutflowInertanceMmHgS2PerMl]), 0, 1e-6 * Math.Max(1, drop));
    }

    [Fact]
    public void Alveolar_pressure_governs_lung_flow_only_where_it_is_above_venous_pressure()
    {
        CirculationParameters p = CirculationParameters.Adult.With(PleuralSwingMmHg, 0).With(PleuralTransmission, 0.05);
        double LungFlow(double peep, double arterial, double venous)
        {
            CirculationParameters set = p.With(PeepCmH2O, peep);
            MomentOfFlow moment = new(set);
            double pleural = set[PleuralPressureMmHg] + (0.05 * peep * MmHgPerCmH2O);
            moment.Set(S.PulmonaryArtery, set[PulmonaryArteryZeroVolumeMl] + ((arterial - pleural) * set[PulmonaryArteryComplianceMlPerMmHg]));
            moment.Set(S.PulmonaryVein, set[PulmonaryVenousZeroVolumeMl] + ((venous - pleural) * set[PulmonaryVenousComplianceMlPerMmHg]));
            moment.Rates(0, valvesOpen: false);
            return moment.Field.LungFlow.Value;
        }

        double alveolar = p[AlveolarVesselShare] * 30 * MmHgPerCmH2O;
        double resistance = p[PulmonaryResistanceMmHgSPerMl];

        // Zone 3, zone 2, zone 1. The corner of 1 mmHg between zones 2 and 3 is felt by less than 1/(4 d) mmHg at a distance d.
        Assert.Equal((30 - 12) / resistance, LungFlow(0, 30, 12), 0.25 / 12 / resistance);
        Assert.Equal((30 - alveolar) / resistance, LungFlow(30, 30, 4), 0.25 / (alveolar - 4) / resistance);
        Assert.Equal(LungFlow(30, 30, 4), LungFlow(30, 30, 0), 0.25 / (alveolar - 4) / resistance);
        Assert.Equal(0, LungFlow(30, 12, 4));
    }

    [Fact]
    public void With_the_valve_closed_the_aorta_runs_down_as_the_exponential_of_its_network()
    {
        CirculationParameters p = CirculationParameters.Adult.With(PleuralSwingMmHg, 0);
        MomentOfFlow moment = new(p);
        moment.Set(S.ArchFlow, 40);
        moment.Set(S.DescendingFlow, 20);
        moment.Rates(0, valvesOpen: false);
        double[] start = [moment.Pressure(S.Ascending), moment.Pressure(S.Arch), moment.Pressure(S.Descending), 40, 20, 1];
        double[] exact = Matrix.ExponentialTimes(Network(moment), start, 0.5);

        int[] arterial = [S.Ascending, S.Arch, S.Descending, S.ArchFlow, S.DescendingFlow];
        RungeKutta(moment, arterial, 0.5, 5000);
        moment.Rates(0, valvesOpen: false);
        Assert.Equal(exact[0], moment.Pressure(S.Ascending), 1e-7);
        Assert.Equal(exact[1], moment.Pressure(S.Arch), 1e-7);
        Assert.Equal(exact[2], moment.Pressure(S.Descending), 1e-7);

        // The run-down is real: about one time constant of resistance and compliance, 0.9 x 1.5 s, takes a third away in half a second.
        Assert.InRange(exact[1] / start[1], 0.55, 0.85);
    }

    /// <summary>The linear network written down from its parameters: three pressures, two flows and a one for what is constant.</summary>
    private static double[,] Network(MomentOfFlow moment)
    {
        CirculationParameters p = moment.Parameters;
        double all = 1 / p[SystemicResistanceMmHgSPerMl];
        double upper = all * p[UpperShare] * p[AscendingPartOfUpper];
        double heart = all * p[CoronaryShare];
        double left = all * p[UpperShare] * (1 - p[AscendingPartOfUpper]);
        double splanchnic = all * p[SplanchnicShare];
        double lower = all * (1 - p[UpperShare] - p[CoronaryShare] - p[SplanchnicShare]);
        (double c0, double c1, double c2) = (p[AscendingComplianceMlPerMmHg], p[ArchComplianceMlPerMmHg], p[DescendingComplianceMlPerMmHg]);
        (double l0, double l1, double r) = (p[ArchInertanceMmHgS2PerMl], p[DescendingInertanceMmHgS2PerMl], p[AorticResistanceMmHgSPerMl]);
        double upperPressure = moment.Pressure(S.UpperVein);
        return new[,]
        {
            { -(upper + heart) / c0, 0, 0, -1 / c0, 0, ((upper * upperPressure) + (heart * moment.Pressure(S.RightAtrium))) / c0 },
            { 0, -left / c1, 0, 1 / c1, -1 / c1, left * upperPressure / c1 },
            {
                0, 0, -(splanchnic + lower) / c2, 0, 1 / c2,
                ((splanchnic * moment.Pressure(S.SplanchnicVein)) + (lower * moment.Pressure(S.LowerVein))) / c2
            },
            { 1 / l0, -1 / l0, 0, -r / l0, 0, 0 },
            { 0, 1 / l1, -1 / l1, 0, -r / l1, 0 },
            { 0, 0, 0, 0, 0, 0 },
        };
    }

    /// <summary>The classical fourth-order rule on the chosen parts of the state; the rest is held.</summary>
    private static void RungeKutta(MomentOfFlow moment, int[] parts, double seconds, int steps)
    {
        double h = seconds / steps;
        double[] At(double[] y)
        {
            for (int i = 0; i < parts.Length; i++)
            {
                moment.Set(parts[i], y[i]);
            }

            double[] rates = moment.Rates(0, valvesOpen: false);
            return [.. parts.Select(part => rates[part])];
        }

        double[] Moved(double[] y, double[] k, double by) => [.. y.Select((v, i) => v + (by * k[i]))];
        double[] now = [.. parts.Select(part => moment.State[part].Value)];
        for (int s = 0; s < steps; s++)
        {
            double[] a = At(now);
            double[] b = At(Moved(now, a, h / 2));
            double[] c = At(Moved(now, b, h / 2));
            double[] d = At(Moved(now, c, h));
            now = [.. now.Select((v, i) => v + (h / 6 * (a[i] + (2 * b[i]) + (2 * c[i]) + d[i])))];
        }

        At(now);
    }
}
