using System.Reflection;
using System.Text.Json;

namespace Cavaxis.Web.Help;

/// <summary>All explanations, read from the data file that comes with the program.</summary>
public static class HelpText
{
    private const string Resource = "help/terms.json";
    private const string ModelFolder = "models/";

    private static readonly JsonSerializerOptions Reading = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    private static readonly Lazy<IReadOnlyDictionary<string, HelpEntry>> ByKey = new(() => All().ToDictionary(static e => e.Key, StringComparer.Ordinal));

    /// <summary>The explanation of a number.</summary>
    /// <param name="key">What pages call it by.</param>
    /// <returns>The explanation.</returns>
    /// <exception cref="KeyNotFoundException">No such explanation: a number must not be shown without one.</exception>
    public static HelpEntry Of(string key) =>
        ByKey.Value.TryGetValue(key, out HelpEntry? entry) ? entry : throw new KeyNotFoundException($"The help has no '{key}'.");

    /// <summary>All explanations in the order of the file.</summary>
    /// <returns>The explanations.</returns>
    public static IReadOnlyList<HelpEntry> All()
    {
        using Stream file = Open(Resource)!;
        return JsonSerializer.Deserialize<List<HelpEntry>>(file, Reading)!;
    }

    /// <summary>A page of docs/models.</summary>
    /// <param name="page">Its name without ending.</param>
    /// <returns>Its text; null where there is no such page.</returns>
    public static string? Model(string page)
    {
        using Stream? file = Open($"{ModelFolder}{page}.md");
        if (file is null)
        {
            return null;
        }

        using StreamReader reader = new(file);
        return reader.ReadToEnd();
    }

    private static Stream? Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name);
}
