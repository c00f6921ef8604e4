using Cavaxis.Circulation.Parameters;
using Cavaxis.Course.Explanations.Knowledge;

namespace Cavaxis.Course.Explanations.Simulation;

/// <summary>One form of a cause as a change of the numbers of the circulation model.</summary>
/// <param name="Cause">Cause.</param>
/// <param name="Variant">Form.</param>
/// <param name="Apply">The numbers with the cause at a size from 0 (none) to 1 (as large as patients are brought through).</param>
public sealed record CauseForm(CauseOfChange Cause, string Variant, Func<CirculationParameters, double, CirculationParameters> Apply);
