using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Planning.Arterial;

/// <summary>What is asked of the arterial tree of a case.</summary>
/// <param name="File">The case.</param>
/// <param name="Catalogue">Devices.</param>
/// <param name="Circulation">The circulation with its circuit and every change that is asked.</param>
/// <param name="Plan">The plan whose cannulae return the blood; null for the support that runs.</param>
/// <param name="Basis">What is computed, in words.</param>
/// <param name="Assumed">What was assumed about the circulation.</param>
public sealed record ArteriesQuestion(
    CaseFile File, DeviceCatalogue Catalogue, CirculationParameters Circulation, CannulationPlan? Plan, string Basis, IReadOnlyList<string> Assumed)
{
    /// <summary>Whether the trees that the intervals stand on are computed too; where only means are read they are not, which takes a third of the time.</summary>
    public bool WithIntervals { get; init; } = true;

    /// <summary>Pump flows of a sweep, L/min; empty where none is asked for.</summary>
    public IReadOnlyList<double> SweepFlowsLPerMin { get; init; } = [];

    /// <summary>Strengths of the left ventricle of a sweep, as factors on that of <see cref="Circulation"/>; empty for 1 alone.</summary>
    public IReadOnlyList<double> SweepStrengths { get; init; } = [];
}
