using System.Collections.Immutable;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>A patient of the library: what the signs are before, and what each cause and each setting does to them.</summary>
/// <param name="Name">Name.</param>
/// <param name="Support">Kind of support.</param>
/// <param name="Levels">Signs before, unit of the quantity, in the order of the signs; not a number where the model has none.</param>
/// <param name="Patterns">What causes do.</param>
/// <param name="Responses">What settings do.</param>
public sealed record PatternPatient(
    string Name,
    SupportKind Support,
    ImmutableArray<double> Levels,
    ImmutableArray<CausePattern> Patterns,
    ImmutableArray<SettingResponse> Responses);
