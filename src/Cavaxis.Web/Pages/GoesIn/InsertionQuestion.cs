using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>One insertion study that is asked for.</summary>
/// <param name="File">The case.</param>
/// <param name="Json">Its text, which tells it apart from others.</param>
/// <param name="Planning">The planning result.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Wire">Class of wire.</param>
/// <param name="Anatomies">In how many sampled anatomies.</param>
/// <param name="Otherwise">Whether other wires, depths and sides are tried too.</param>
public sealed record InsertionQuestion(
    CaseFile File, string Json, PlanningResult Planning, CannulationPlan Plan, WireClass Wire, int Anatomies, bool Otherwise = false);
