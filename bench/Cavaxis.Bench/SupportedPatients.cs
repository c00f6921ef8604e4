using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Bench;

/// <summary>Patients to compute: one of each kind of support, and many drawn around them.</summary>
internal static class SupportedPatients
{
    // What sets the pace of a circulation, its pressures and its gases; each is drawn within 20 % of its value.
    private static readonly CirculationParameter[] Drawn =
    [
        HeartRatePerMin, BreathsPerMin, LeftVentricleElastanceMmHgPerMl, RightVentricleElastanceMmHgPerMl, SystemicResistanceMmHgSPerMl,
        PulmonaryResistanceMmHgSPerMl, DescendingComplianceMlPerMmHg, SplanchnicComplianceMlPerMmHg, HaemoglobinGPerDl,
        OxygenConsumptionMlPerMin, ShuntFraction, TargetFlowLPerMin, JetMixing,
    ];

    // Blood volume moves filling pressures far more than its own share.
    private const double VolumeSpread = 0.05;
    private const double Spread = 0.2;

    /// <summary>One patient of each kind.</summary>
    public static IReadOnlyList<(string Name, CirculationParameters Patient)> Kinds { get; } =
    [
        ("no support", CirculationParameters.Adult),
        ("V-V two-site", Of("severe-lung-failure").With((CircuitOn, 1), (TargetFlowLPerMin, 4.5))),
        ("V-A", Of("cardiogenic-shock").With((CircuitOn, 1), (ArterialShareOfReturn, 1), (TargetFlowLPerMin, 3.5))),
    ];

    /// <summary>Patients drawn around one.</summary>
    /// <param name="patient">The patient.</param>
    /// <param name="count">How many.</param>
    /// <param name="seed">The same seed draws the same patients.</param>
    /// <returns>The patients.</returns>
    public static CirculationParameters[] Around(CirculationParameters patient, int count, int seed)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(0, count).Select(_ => Draw(patient, random))];
    }

    /// <summary>Patients of all kinds in turn.</summary>
    /// <param name="count">How many.</param>
    /// <param name="seed">The same seed draws the same patients.</param>
    /// <returns>The patients.</returns>
    public static CirculationParameters[] Cohort(int count, int seed)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(0, count).Select(i => Draw(Kinds[i % Kinds.Count].Patient, random))];
    }

    private static CirculationParameters Of(string preset) => CirculationPresets.Of(preset).Parameters();

    private static CirculationParameters Draw(CirculationParameters patient, Random random)
    {
        CirculationParameters drawn = patient.WithNearest(BloodVolumeMl, patient[BloodVolumeMl] * Factor(random, VolumeSpread));
        return Drawn.Aggregate(drawn, (set, p) => set.WithNearest(p, set[p] * Factor(random, Spread)));
    }

    private static double Factor(Random random, double spread) => 1 + (spread * ((2 * random.NextDouble()) - 1));
}
