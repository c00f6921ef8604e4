using System.Collections.Immutable;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>An insertion from the first step to the last.</summary>
/// <param name="Kit">Devices.</param>
/// <param name="Sleeve">Skin.</param>
/// <param name="Steps">Steps in order.</param>
public sealed record InsertionScript(InsertionKit Kit, Sleeve Sleeve, ImmutableArray<InsertionStep> Steps);
