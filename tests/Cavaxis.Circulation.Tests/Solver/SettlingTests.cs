using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;
using Cavaxis.Circulation.Tests.Calibration;
using Cavaxis.Circulation.Tests.CrossChecks;

namespace Cavaxis.Circulation.Tests.Solver;

public class SettlingTests
{
    [Fact]
    public void A_patient_settles_in_company_to_what_it_settles_to_alone()
    {
        CirculationParameters[] patients =
            [CrossCase.Of("normal adult"), CrossCase.Of("V-A with a weak ventricle"), CrossCase.Of("two-site V-V")];
        IReadOnlyList<SettledState> together = CirculationSimulator.Settle(patients);
        for (int i = 0; i < patients.Length; i++)
        {
            SettledState alone = CirculationSimulator.Settle(patients[i]);
            Assert.True(alone.Settled, alone.Reason);
            Assert.Equal(alone.SimulatedS, together[i].SimulatedS);
            Assert.Equal(alone.State.ToArray(), together[i].State.ToArray());
        }
    }

    [Fact]
    public void Patients_over_the_whole_prior_settle_to_where_ten_times_stricter_settling_leads()
    {
        CirculationParameters[] patients = [.. SyntheticPatients.Draw(24).All.Select(static p => p.Truth)];
        IReadOnlyList<SettledState> usual = CirculationSimulator.Settle(patients);
        IReadOnlyList<SettledState> strict = CirculationSimulator.Settle(patients, null, new Tolerance(1e-6), 5e-6, CancellationToken.None);
        CirculationQuantity[] shown =
        [
            CirculationQuantity.MeanArterialPressureMmHg, CirculationQuantity.WedgePressureMmHg, CirculationQuantity.NativeOutputLPerMin,
            CirculationQuantity.RightArmSaturationPercent, CirculationQuantity.RightArmPco2MmHg, CirculationQuantity.PreMembraneSaturationPercent,
        ];
        for (int i = 0; i < patients.Length; i++)
        {
            Assert.True(usual[i].Settled && strict[i].Settled, usual[i].Reason + strict[i].Reason);
            foreach (CirculationQuantity quantity in shown)
            {
                double end = strict[i].RequireSummary()[quantity];
                Assert.Equal(end, usual[i].RequireSummary()[quantity], 0.005 * Math.Max(1, Math.Abs(end)));
            }
        }
    }
}
