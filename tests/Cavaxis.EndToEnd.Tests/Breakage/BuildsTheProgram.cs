namespace Cavaxis.EndToEnd.Tests.Breakage;

/// <summary>Tests that may build the program again; they run alone, after all that use it.</summary>
[CollectionDefinition(nameof(BuildsTheProgram), DisableParallelization = true)]
public sealed class BuildsTheProgram;
