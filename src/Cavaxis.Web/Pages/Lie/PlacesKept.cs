using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.Lie;

/// <summary>Where cannulae were put in this window, patient by patient and plan by plan, so that they lie there when one comes back.</summary>
public sealed class PlacesKept
{
    private readonly Dictionary<(string Patient, string Plan), IReadOnlyList<CannulaPlace>> kept = [];

    /// <summary>The places of a plan; null where nothing was moved.</summary>
    /// <param name="patient">Identifier of the patient.</param>
    /// <param name="plan">Name of the plan.</param>
    public IReadOnlyList<CannulaPlace>? Of(string patient, string plan) => kept.GetValueOrDefault((patient, plan));

    /// <summary>Keeps places.</summary>
    /// <param name="patient">Identifier of the patient.</param>
    /// <param name="plan">Name of the plan.</param>
    /// <param name="places">The places.</param>
    public void Keep(string patient, string plan, IReadOnlyList<CannulaPlace> places) => kept[(patient, plan)] = places;
}
