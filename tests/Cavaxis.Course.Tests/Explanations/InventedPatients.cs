using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Course.Explanations.Knowledge;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>Patients of the suite: drawn by seed over body size, heart, lungs, filling, ports and circuit. None is in the library of the explanations.</summary>
public static class InventedPatients
{
    private static readonly CirculationParameter[] Drawn =
    [
        HeartRatePerMin, LeftVentricleElastanceMmHgPerMl, RightVentricleElastanceMmHgPerMl, SystemicResistanceMmHgSPerMl, PulmonaryResistanceMmHgSPerMl,
        SplanchnicComplianceMlPerMmHg, DescendingComplianceMlPerMmHg, OxygenConsumptionMlPerMin, DrainageQuadraticMmHgPerLPerMin2, ReturnQuadraticMmHgPerLPerMin2,
        ReturnLinearMmHgPerLPerMin, MembraneRatedFlowLPerMin, SweepLPerMin, JetMixing,
    ];

    public static CirculationParameters Draw(SupportKind support, Random random)
    {
        double U(double low, double high) => low + ((high - low) * random.NextDouble());
        CirculationParameters p = Mass(support, U(0, 1), U(0, 1));
        double size = p.MassKg / 70;
        p = Drawn.Aggregate(p, (set, which) => set.WithNearest(which, set[which] * Math.Exp(0.16 * Normal(random))));
        p = p.WithNearest(BloodVolumeMl, p[BloodVolumeMl] * U(0.94, 1.05)).WithNearest(HaemoglobinGPerDl, U(7.5, 12));
        double flow = Math.Pow(size, 0.75) * (support == SupportKind.VenoVenous ? U(3.2, 5.2) : U(2.6, 4.4));
        p = p.With((CircuitOn, 1), (TargetFlowLPerMin, flow)).WithNearest(InspiredOxygenFraction, U(0.35, 0.8)).WithNearest(PeepCmH2O, U(6, 14))
            .WithNearest(AlveolarSwingCmH2O, U(9, 15)).WithNearest(PleuralSwingMmHg, U(1, 4));
        if (support == SupportKind.VenoVenous)
        {
            return p.WithNearest(ShuntFraction, U(0.55, 0.97)).WithNearest(AlveolarVentilationLPerMin, p[AlveolarVentilationLPerMin] * U(0.25, 0.7)).With(Ports(random));
        }

        CirculationParameters heart = p.WithNearest(ShuntFraction, U(0.08, 0.55)).WithNearest(ArterialShareOfReturn, support == SupportKind.VenoArterial ? 1 : U(0.45, 0.75));
        return support == SupportKind.VenoArterial ? heart : heart.WithNearest(ShuntFraction, U(0.4, 0.8)).With(Ports(random));
    }

    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static CirculationParameters Mass(SupportKind support, double kind, double place)
    {
        if (support == SupportKind.VenoVenous)
        {
            return kind < 0.2
                ? Preset(place < 0.5 ? "child-10kg" : "child-20kg")
                : Scaled(kind < 0.7 ? "severe-lung-failure" : kind < 0.85 ? "septic-shock" : "adult", 50 + (60 * place), kind < 0.7 ? 1 : 1.12);
        }

        if (kind < 0.15)
        {
            return Preset(place < 0.5 ? "child-10kg" : "child-20kg").Times(LeftVentricleElastanceMmHgPerMl, 0.45).Times(RightVentricleElastanceMmHgPerMl, 0.65).Times(BloodVolumeMl, 1.04);
        }

        CirculationParameters shock = Scaled("cardiogenic-shock", 50 + (60 * place), 0.97);
        return shock.Times(LeftVentricleElastanceMmHgPerMl, 1 + (1.3 * kind)).Times(SystemicResistanceMmHgSPerMl, 0.72);
    }

    private static CirculationParameters Preset(string name) => CirculationPresets.Of(name).Parameters();

    /// <summary>A preset of 70 kg carried to another mass: each number keeps its ratio to the scaled adult.</summary>
    private static CirculationParameters Scaled(string name, double massKg, double filling)
    {
        CirculationParameters from = Preset(name);
        CirculationParameters to = CirculationParameters.ForMass(massKg);
        foreach (PresetChange change in CirculationPresets.Of(name).Changes)
        {
            double exponent = ParameterTable.Of(change.Parameter).MassExponent;
            to = to.WithNearest(change.Parameter, from[change.Parameter] * Math.Pow(massKg / 70, exponent));
        }

        return to.WithNearest(BloodVolumeMl, to[BloodVolumeMl] * filling);
    }

    private static AxisPorts Ports(Random random)
    {
        double[] Shares(double[] middle)
        {
            double[] raw = [.. middle.Select(m => m * Math.Exp(0.5 * Normal(random)))];
            double sum = raw.Sum();
            return [.. raw.Select(r => r / sum)];
        }

        return random.NextDouble() < 0.6
            ? new AxisPorts(Shares([0, 0, 0, 0.05, 0, 0.35, 0.3, 0.3, 0, 0]), Shares([0, 0.1, 0.45, 0.35, 0.1, 0, 0, 0, 0, 0]))
            : new AxisPorts(Shares([0, 0.1, 0.05, 0, 0, 0.1, 0.25, 0.5, 0, 0]), Shares([0, 0, 0.1, 0.3, 0.6, 0, 0, 0, 0, 0]));
    }
}
