using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.Commands;

/// <summary>Reads the options of <c>calibrate</c> and <c>whatif</c>.</summary>
internal static class CalibrationOptionsReader
{
    /// <summary>Reads them.</summary>
    /// <param name="settings">Settings as typed.</param>
    /// <returns>Members of the ensemble and seed.</returns>
    /// <exception cref="InputFaultException">Every option that cannot be used.</exception>
    public static (int Members, ulong Seed) Read(CalibrationSettings settings)
    {
        List<InputFault> faults = [];
        ulong members = PlanOptionsReader.Whole("--members", settings.Members, CaseCalibration.FewestMembers, CaseCalibration.MostMembers, faults);
        ulong seed = PlanOptionsReader.Whole("--seed", settings.Seed, 0, PlanOptionsReader.LargestSeed, faults);
        return faults.Count > 0 ? throw new InputFaultException(faults) : ((int)members, seed);
    }
}
