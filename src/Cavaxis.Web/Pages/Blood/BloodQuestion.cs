using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.Blood;

/// <summary>What one window asks of the arterial tree.</summary>
/// <param name="File">The case.</param>
/// <param name="Json">Its text, which tells it apart from others.</param>
/// <param name="Plan">The plan that is connected; not looked at where support runs.</param>
/// <param name="Changes">Changes to the circulation.</param>
/// <param name="Sweep">Whether flows and strengths around it are computed too.</param>
public sealed record BloodQuestion(CaseFile File, string Json, CannulationPlan? Plan, IReadOnlyList<ParameterChange> Changes, bool Sweep = false);
