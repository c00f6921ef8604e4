using System.Collections.Concurrent;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>The demo cases and what the program says to each; every answer is computed once for all tests.</summary>
public static class DemoCase
{
    private static readonly ConcurrentDictionary<string, Lazy<Ended>> Answers = new();

    /// <summary>Names of the demo files, as test data.</summary>
    public static TheoryData<string> Names => [.. RepositoryFolder.DemoFiles.Select(static f => Path.GetFileName(f))];

    /// <summary>A small case for tests in which the content does not matter.</summary>
    public static string Small => PathOf("child-lung-failure.json");

    /// <summary>Path of a demo file.</summary>
    public static string PathOf(string name) => Path.Combine(RepositoryFolder.Demo, name);

    /// <summary>Options that ask for fewer anatomies than usual, where their number does not matter.</summary>
    public static IReadOnlyList<string> Few { get; } = ["--anatomies", "1000"];

    /// <summary>Answer to <c>plan</c> over few anatomies, with more options.</summary>
    public static Ended Plan(string name, params string[] options) => Answers.GetOrAdd(
        string.Join('\n', [name, .. options]), _ => new Lazy<Ended>(() => CavaxisProcess.Run(["plan", PathOf(name), .. Few, .. options]))).Value;
}
