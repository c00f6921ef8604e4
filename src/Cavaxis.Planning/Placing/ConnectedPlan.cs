using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Planning.Placing;

/// <summary>
/// The patients of a plan's outlook on the plan's circuit, so that a change can be asked of them before anything is placed: those that
/// <see cref="CannulationPlan.Circulation"/> stands on.
/// </summary>
/// <param name="Members">Patients on the circuit; none where there are none.</param>
/// <param name="Assumed">What was assumed about the patient beyond the case.</param>
/// <param name="Reason">Why there are none; empty where there are.</param>
public sealed record ConnectedPlan(IReadOnlyList<CirculationParameters> Members, IReadOnlyList<string> Assumed, string Reason);
