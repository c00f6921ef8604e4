using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Planning.Outlook;

/// <summary>Patients of the circulation model who all agree with what the case says, without support.</summary>
/// <param name="Members">The patients; none where the model cannot be made to agree.</param>
/// <param name="Assumed">What was assumed beyond the case.</param>
/// <param name="Reason">Why there are none; empty where there are.</param>
internal sealed record PatientSet(IReadOnlyList<CirculationParameters> Members, IReadOnlyList<string> Assumed, string Reason);
