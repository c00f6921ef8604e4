using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
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
}
