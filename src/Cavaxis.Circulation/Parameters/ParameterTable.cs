using System.Text.Json;
using System.Text.Json.Serialization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Circulation.Parameters;

/// <summary>All numbers of the model with meaning, unit, range and source: <c>catalogue/circulation.json</c>, built in.</summary>
public static class ParameterTable
{
    /// <summary>Body mass of the adult that the table describes.</summary>
    public const double ReferenceMassKg = 70;

    private static readonly JsonSerializerOptions Reading = new()
    {
        PropertyNameCaseInsensitive = true,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>The definitions, in the order of <see cref="CirculationParameter"/>.</summary>
    public static IReadOnlyList<ParameterDefinition> All { get; } = Read();

    /// <summary>Number of parameters.</summary>
    public static int Count => All.Count;

    /// <summary>The definition of a parameter.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <returns>Its definition.</returns>
    public static ParameterDefinition Of(CirculationParameter parameter) => All[(int)parameter];

    /// <summary>The parameter of a name, upper or lower case.</summary>
    /// <param name="name">Name as in the table.</param>
    /// <returns>The parameter.</returns>
    /// <exception cref="InputFaultException">There is no such name; the fault lists the nearest ones.</exception>
    public static CirculationParameter Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        for (int i = 0; i < All.Count; i++)
        {
            if (string.Equals(All[i].Name, name, StringComparison.OrdinalIgnoreCase))
            {
                return (CirculationParameter)i;
            }
        }

        IEnumerable<string> near = All.Select(d => d.Name).OrderBy(n => EditDistance.Between(n.ToUpperInvariant(), name.ToUpperInvariant())).Take(3);
        throw new InputFaultException(new InputFault(
            FaultCode.UnknownField,
            name,
            name,
            "a name of the parameter table, such as " + string.Join(", ", near),
            "List the names with `circulation --parameters`."));
    }

    /// <summary>Accepted bounds for a body: the adult bounds, widened by the scale of the parameter.</summary>
    /// <param name="parameter">The parameter.</param>
    /// <param name="massKg">Body mass.</param>
    /// <returns>Lowest and highest value.</returns>
    public static (double Low, double High) Bounds(CirculationParameter parameter, double massKg)
    {
        ParameterDefinition d = Of(parameter);
        double scale = Math.Pow(massKg / ReferenceMassKg, d.MassExponent);
        (double a, double b) = (d.Low * scale, d.High * scale);
        return (Math.Min(d.Low, a), Math.Max(d.High, b));
    }

    private static ParameterDefinition[] Read()
    {
        using Stream stream = typeof(ParameterTable).Assembly.GetManifestResourceStream("circulation.json")
            ?? throw new InvalidOperationException("The parameter table is missing from the assembly.");
        ParameterFile file = JsonSerializer.Deserialize<ParameterFile>(stream, Reading)
            ?? throw new InvalidOperationException("The parameter table is empty.");
        string[] names = Enum.GetNames<CirculationParameter>();
        if (!file.Parameters.Select(d => d.Name).SequenceEqual(names, StringComparer.OrdinalIgnoreCase))
        {
            throw new InvalidOperationException("The parameter table and the list of parameters differ.");
        }

        return file.Parameters;
    }

    private sealed record ParameterFile(ParameterDefinition[] Parameters);
}
