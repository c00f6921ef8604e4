namespace Cavaxis.Validation;

/// <summary>Every reference check of every room.</summary>
public static class AllChecks
{
    private static readonly IReferenceChecks[] Checks =
    [
        new BloodChecks(), new DeviceChecks(), new DeviceCannulaChecks(), new AnatomyChecks(), new AnatomyPopulationChecks(), new AnatomyLumenChecks(),
        new CirculationChecks(), new PigChecks(), new RecirculationChecks(), new PlanningChecks(), new PlanningRapidChecks(), new CourseGasExchangeChecks(), new CourseCriteriaChecks(), new CourseOutcomeChecks(),
        new MechanicsRodChecks(), new MechanicsStabilityChecks(), new MechanicsContactChecks(), new MechanicsTubeChecks(), new MechanicsRingChecks(), new MechanicsHelixChecks(),
        new ImagingMeasurementChecks(), new ImagingFlowChecks(), new ImagingEchoChecks(), new ImagingTomographyChecks(),
        new ArteryWaveChecks(), new ArteryBalanceChecks(), new ArterialSupportChecks(),
    ];

    /// <summary>Computes every row now.</summary>
    /// <returns>The rows, room by room.</returns>
    public static IReadOnlyList<ValidationRow> Rows() => [.. Checks.SelectMany(check => check.Rows())];
}
