using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Circulation.Tests.Calibration;

public class CirculationCalibratorTests(FittedPatients patients) : IClassFixture<FittedPatients>
{
    [Fact]
    public void Every_reading_of_a_known_patient_is_met_by_the_fit()
    {
        Assert.True(patients.Full.Converged);
        Assert.All(patients.Full.Observations, static o => Assert.InRange(Math.Abs(o.ResidualSd), 0, 1));
        Assert.True(patients.Full.MisfitProbability > 0.05);
        Assert.Empty(patients.Full.Warnings);
    }

    [Fact]
    public void The_numbers_of_a_known_patient_are_found_again_inside_their_intervals()
    {
        FittedParameter[] determined = [.. patients.Full.Parameters.Where(static p => p.IsDetermined)];
        Assert.True(determined.Length >= 8, $"only {determined.Length} numbers are determined");
        Assert.All(determined, p => Assert.InRange(patients.Truth[p.Parameter], p.Posterior.Low, p.Posterior.High));
    }

    [Fact]
    public void The_fit_comes_nearer_to_the_known_patient_than_the_prior_was()
    {
        foreach (CirculationParameter moved in new[] { LeftVentricleElastanceMmHgPerMl, SystemicResistanceMmHgSPerMl, PulmonaryResistanceMmHgSPerMl, OxygenConsumptionMlPerMin })
        {
            double before = Math.Abs(Math.Log(FittedPatients.Prior[moved] / patients.Truth[moved]));
            double after = Math.Abs(Math.Log(patients.Full.Best![moved] / patients.Truth[moved]));
            Assert.True(after < before, $"{moved}: {after} from {before}");
        }
    }

    [Fact]
    public void A_mean_arterial_pressure_alone_leaves_what_it_cannot_tell_at_the_prior_and_names_it()
    {
        CalibrationResult fit = patients.PressureOnly;
        Assert.True(fit.Found);
        foreach (CirculationParameter silent in new[] { PulmonaryResistanceMmHgSPerMl, ShuntFraction, OxygenConsumptionMlPerMin, AlveolarVentilationLPerMin })
        {
            FittedParameter p = fit.Parameters.Single(f => f.Parameter == silent);
            Assert.False(p.IsDetermined);
            Assert.InRange(p.Determined, -1e-9, 0.15);
            Assert.InRange(p.Posterior.Value, p.Prior.Low, p.Prior.High);
            Assert.Contains(fit.NotDetermined, s => s.StartsWith(PriorTable.Of(silent).Words, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void More_readings_never_widen_what_is_believed()
    {
        CalibrationResult[] order = [patients.PressureOnly, patients.MonitorOnly, patients.Full];
        for (int i = 1; i < order.Length; i++)
        {
            foreach (FittedParameter more in order[i].Parameters)
            {
                // The slopes are those of another best place, so a few hundredths are left to curvature.
                FittedParameter fewer = order[i - 1].Parameters.Single(f => f.Parameter == more.Parameter);
                Assert.True(
                    Math.Sqrt(1 - more.Determined) < Math.Sqrt(1 - fewer.Determined) + 0.08,
                    $"{more.Parameter}: {more.Determined:F3} from {fewer.Determined:F3}");
            }
        }
    }

    [Fact]
    public void Readings_that_contradict_each_other_are_reported()
    {
        Assert.True(patients.Contradictory.MisfitProbability < 0.01);
        Assert.Contains(patients.Contradictory.Warnings, static w => w.Contains("contradict", StringComparison.Ordinal));
        Assert.Contains(patients.Contradictory.Warnings, static w => w.Contains("mean arterial pressure", StringComparison.Ordinal));
        Assert.DoesNotContain(patients.Full.Warnings, static w => w.Contains("contradict", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_readings_give_the_same_belief_and_the_same_ensemble()
    {
        Assert.Equal(patients.Full.Parameters.Count, patients.FullAgain.Parameters.Count);
        for (int i = 0; i < patients.Full.Parameters.Count; i++)
        {
            // Company in the row may add a breath to the settling, so the two agree to the settling error, not to the bit.
            (FittedParameter a, FittedParameter b) = (patients.Full.Parameters[i], patients.FullAgain.Parameters[i]);
            Assert.Equal(0, Math.Log(a.Posterior.Value / b.Posterior.Value), 0.5 * PriorTable.Of(a.Parameter).Sd * Math.Sqrt(1 - a.Determined));
        }

        Assert.Equal(8, patients.Full.Ensemble.Count);
        Assert.Equal(8, patients.Full.Ensemble.Select(static m => m[BloodVolumeMl]).Distinct().Count());
    }

    [Fact]
    public void What_is_set_directly_is_taken_and_not_fitted()
    {
        FittedObservation flow = patients.Full.Observations.Single(static o => o.Kind == ObservationKind.PumpFlowLPerMin);
        Assert.True(flow.TakenDirectly);
        Assert.Equal(patients.Truth[HeartRatePerMin], patients.Full.Best![HeartRatePerMin], 0.01);
        Assert.Equal(Origin.Measured, flow.Observed.Origin);
        Assert.DoesNotContain(patients.Full.Parameters, static p => p.Parameter == TargetFlowLPerMin);
    }

    [Fact]
    public void A_patient_that_does_not_settle_is_reported_and_has_no_result()
    {
        // Nothing takes carbon dioxide away: it rises for ever.
        CirculationParameters lost = CirculationParameters.Adult.With(AlveolarVentilationLPerMin, 0);
        CalibrationResult fit = CirculationCalibrator.Fit(
            lost, [BedsideObservation.Of(ObservationKind.ArterialMeanMmHg, 80)], new CalibrationOptions { Fitted = [SystemicResistanceMmHgSPerMl] });
        Assert.False(fit.Found);
        Assert.NotEmpty(fit.Reason);
        Assert.Null(fit.Best);
        Assert.Empty(fit.Parameters);
        Assert.Empty(fit.Observations);
        Assert.Empty(fit.Ensemble);
        Assert.False(fit.Converged);
    }

    [Fact]
    public void Readings_that_the_patient_cannot_give_are_refused()
    {
        static FaultCode Code(CirculationParameters prior, params BedsideObservation[] readings) =>
            Assert.Throws<InputFaultException>(() => CirculationCalibrator.Fit(prior, readings)).Faults[0].Code;
        CirculationParameters adult = CirculationParameters.Adult;
        Assert.Equal(FaultCode.MissingField, Code(adult));
        Assert.Equal(FaultCode.Contradiction, Code(adult, BedsideObservation.Of(ObservationKind.InletPressureMmHg, -60)));
        Assert.Equal(
            FaultCode.Contradiction,
            Code(adult.With(CircuitOn, 1).With(ArterialShareOfReturn, 1), BedsideObservation.Of(ObservationKind.RecirculationPercent, 20)));
    }

    [Fact]
    public void A_stopped_fit_throws()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => CirculationCalibrator.Fit(
            CirculationParameters.Adult, [BedsideObservation.Of(ObservationKind.ArterialMeanMmHg, 80)], null, stop.Token));
    }
}
