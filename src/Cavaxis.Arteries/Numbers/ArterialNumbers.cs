using System.Text.Json;
using System.Text.Json.Serialization;

namespace Cavaxis.Arteries.Numbers;

/// <summary>The numbers of the arterial support: <c>catalogue/arterial-support.json</c>, built in.</summary>
public static class ArterialNumbers
{
    private static readonly JsonSerializerOptions Reading = new()
    {
        PropertyNameCaseInsensitive = true,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>All numbers, in the order of <see cref="ArterialConstant"/>.</summary>
    public static IReadOnlyList<ArterialNumber> All { get; } = Read();

    /// <summary>One number with its source.</summary>
    /// <param name="constant">Which.</param>
    /// <returns>The number.</returns>
    public static ArterialNumber Of(ArterialConstant constant) => All[(int)constant];

    /// <summary>The value of one number in its unit.</summary>
    /// <param name="constant">Which.</param>
    /// <returns>The value.</returns>
    public static double Value(ArterialConstant constant) => All[(int)constant].Value;

    private static ArterialNumber[] Read()
    {
        using Stream stream = typeof(ArterialNumbers).Assembly.GetManifestResourceStream("arterial-support.json")
            ?? throw new InvalidOperationException("The numbers of the arterial support are missing from the assembly.");
        NumberFile file = JsonSerializer.Deserialize<NumberFile>(stream, Reading)
            ?? throw new InvalidOperationException("The numbers of the arterial support are empty.");
        return file.Numbers.Select(static n => n.Name).SequenceEqual(Enum.GetNames<ArterialConstant>(), StringComparer.OrdinalIgnoreCase)
            ? file.Numbers
            : throw new InvalidOperationException("The numbers of the arterial support and their list differ.");
    }

    private sealed record NumberFile(ArterialNumber[] Numbers);
}
