using System.Reflection;

namespace Cavaxis.Web.Shelf;

/// <summary>The invented cases that come with the program, put on the shelf when it is empty.</summary>
public static class DemoCases
{
    /// <summary>Title of the case that the guide walks through.</summary>
    public const string GuideTitle = "Tall man with severe lung failure";

    private const string Folder = "demo/";

    /// <summary>The cases, by file name.</summary>
    /// <returns>Name and text.</returns>
    public static IReadOnlyList<(string Name, string Json)> All()
    {
        Assembly own = typeof(DemoCases).Assembly;
        return [.. own.GetManifestResourceNames().Where(static n => n.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(name =>
        {
            using StreamReader reader = new(own.GetManifestResourceStream(name)!);
            return (name[Folder.Length..], reader.ReadToEnd());
        })];
    }
}
