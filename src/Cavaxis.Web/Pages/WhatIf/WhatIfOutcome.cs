using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>What changes do: bands over all members, and the way of the patient shown from before to after.</summary>
/// <param name="Changes">The changes that were asked for.</param>
/// <param name="Result">Bands, or too few members for any.</param>
/// <param name="After">The patient shown after the changes; null where it does not come to rest or leaves the range of the model.</param>
/// <param name="Transition">The seconds after the changes; null where there is no way to show.</param>
/// <param name="AfterReason">Why the patient shown has no way; empty where it has.</param>
public sealed record WhatIfOutcome(
    IReadOnlyList<ParameterChange> Changes, WhatIfResult Result, SettledState? After, Trace? Transition, string AfterReason)
{
    /// <summary>Where several changes were asked: what each does alone to each quantity of the patient shown.</summary>
    public IReadOnlyDictionary<(CirculationParameter Parameter, CirculationQuantity Quantity), double> Alone { get; init; } =
        new Dictionary<(CirculationParameter Parameter, CirculationQuantity Quantity), double>();
}
