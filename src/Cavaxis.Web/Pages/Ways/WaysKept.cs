using Cavaxis.Planning.Rules;

namespace Cavaxis.Web.Pages.Ways;

/// <summary>What was compared and weighed in this window, patient by patient.</summary>
public sealed class WaysKept
{
    private readonly Dictionary<string, Dictionary<CriterionName, double>> weights = [];
    private readonly Dictionary<string, List<string>> compared = [];

    /// <summary>Weights that were moved.</summary>
    /// <param name="patient">Identifier of the patient.</param>
    /// <returns>Only those that differ from the rule book's.</returns>
    public Dictionary<CriterionName, double> WeightsOf(string patient) => Of(weights, patient);

    /// <summary>Names of the plans that stand side by side; empty before anyone has chosen them.</summary>
    /// <param name="patient">Identifier of the patient.</param>
    public IList<string> ComparedOf(string patient) => Of(compared, patient);

    private static T Of<T>(Dictionary<string, T> all, string patient)
        where T : new()
    {
        if (!all.TryGetValue(patient, out T? one))
        {
            all[patient] = one = new T();
        }

        return one;
    }
}
