using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Devices.Catalogue;

namespace Cavaxis.Bedside.DeIdentification;

/// <summary>
/// The closed vocabulary of the program: words of its enumerations, keys and units of quantities, kinds of events, identifiers of the built-in generic devices. A text that is
/// exactly one of them was chosen, not written, and can name no one.
/// </summary>
public static class KnownWords
{
    private static readonly FrozenSet<string> All = Vocabulary().ToFrozenSet(StringComparer.Ordinal);

    /// <summary>True for a word of the vocabulary.</summary>
    /// <param name="text">The text.</param>
    /// <returns>Whether it is one.</returns>
    public static bool Contains(string text) => All.Contains(text);

    private static IEnumerable<string> Vocabulary()
    {
        foreach (Assembly room in new[] { typeof(QuantityTable).Assembly, typeof(Planning.Case.CaseFile).Assembly, typeof(Anatomy.Axis.AxisDimension).Assembly, typeof(DeviceCatalogue).Assembly, typeof(Quantities.Estimate).Assembly })
        {
            foreach (string name in room.GetExportedTypes().Where(static t => t.IsEnum).SelectMany(static t => Enum.GetNames(t)))
            {
                yield return name;
                yield return JsonNamingPolicy.CamelCase.ConvertName(name);
            }
        }

        foreach (QuantityDefinition quantity in QuantityTable.All)
        {
            yield return quantity.Key;
            yield return quantity.Unit;
            yield return quantity.Ucum;
        }

        foreach (string kind in CourseEventTable.All.Select(static k => k.Text).Concat(DeviceCatalogue.BuiltIn.Cannulae.Select(static c => c.Id)))
        {
            yield return kind;
        }
    }
}
