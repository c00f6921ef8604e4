using System.Collections.Concurrent;
using System.Text.Json;

namespace Cavaxis.Planning.Json;

/// <summary>Names and words as they stand in the files: camelCase, the same for input, output and schema.</summary>
public static class JsonName
{
    /// <summary>The word that reads as no measurement, no finding, no section.</summary>
    public const string Unknown = "unknown";

    private static readonly ConcurrentDictionary<Type, IReadOnlyList<string>> Words = new();

    /// <summary>The file's name of a property or enum member.</summary>
    /// <param name="name">Name in the program.</param>
    /// <returns>The name in camelCase.</returns>
    public static string Of(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);

    /// <summary>The words of an enum in the order of its members.</summary>
    /// <param name="type">The enum.</param>
    /// <returns>The words.</returns>
    public static IReadOnlyList<string> WordsOf(Type type) => Words.GetOrAdd(type, static t => [.. Enum.GetNames(t).Select(Of)]);
}
