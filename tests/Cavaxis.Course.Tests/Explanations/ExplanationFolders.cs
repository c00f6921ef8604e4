using System.Runtime.CompilerServices;

namespace Cavaxis.Course.Tests.Explanations;

/// <summary>The repository that this file was compiled in.</summary>
public static class ExplanationFolders
{
    public static string Root { get; } = Find();

    private static string Find([CallerFilePath] string file = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));
}
