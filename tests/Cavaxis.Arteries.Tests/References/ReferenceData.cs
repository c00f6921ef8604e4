using System.Globalization;
using Cavaxis.Arteries.Boundaries;

namespace Cavaxis.Arteries.Tests.References;

/// <summary>
/// Tables that lie in shared/reference/arteries beside the repository and are read there: a machine without them leaves the tests that need them with nothing to compare,
/// and they return.
/// </summary>
internal static class ReferenceData
{
    public static string? Folder { get; } = Find();

    public static bool IsMissing => Folder is null;

    /// <summary>Rows of numbers; lines that begin otherwise are left out.</summary>
    public static double[][] Rows(string file, char separator) =>
        [.. File.ReadLines(Path.Combine(Folder!, file)).Where(static line => line.Length > 0 && (char.IsDigit(line[0]) || line[0] == '-'))
            .Select(line => line.Split(separator, StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray())];

    /// <summary>Rows of text below a heading.</summary>
    public static string[][] Table(string file) => [.. File.ReadLines(Path.Combine(Folder!, file)).Skip(1).Select(static line => line.Split(','))];

    public static PeriodicWave Inflow(string file)
    {
        double[][] rows = Rows(file, ' ');
        return new PeriodicWave([.. rows.Select(static r => r[0])], [.. rows.Select(static r => r[1])]);
    }

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string? Find()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string folder = Path.Combine(at.FullName, "shared", "reference", "arteries");
            if (Directory.Exists(folder))
            {
                return folder;
            }
        }

        return null;
    }
}
