using System.Text.Json;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Courses;

/// <summary>
/// How a reading in the record came to be. The record has no field for it: what was not measured says so as the first word of how it was read, and every
/// number that does not say so counts as measured.
/// </summary>
public static class ReadingOrigin
{
    private const string Separator = ": ";

    /// <summary>How it was read, as the record keeps it.</summary>
    /// <param name="origin">How the number came to be.</param>
    /// <param name="method">How it was read; null where that was not said.</param>
    /// <returns>The text for the record; null where there is nothing to say.</returns>
    public static string? MethodOf(Origin origin, string? method) =>
        origin == Origin.Measured ? method : method is null ? Word(origin) : Word(origin) + Separator + method;

    /// <summary>How a number came to be.</summary>
    /// <param name="method">How it was read, as the record keeps it.</param>
    /// <returns>The origin.</returns>
    public static Origin Of(string? method) =>
        Begins(method, Origin.Estimated) ? Origin.Estimated : Begins(method, Origin.Calculated) ? Origin.Calculated : Origin.Measured;

    private static bool Begins(string? method, Origin origin) =>
        method is not null && (method == Word(origin) || method.StartsWith(Word(origin) + Separator, StringComparison.Ordinal));

    private static string Word(Origin origin) => JsonNamingPolicy.CamelCase.ConvertName(origin.ToString());
}
