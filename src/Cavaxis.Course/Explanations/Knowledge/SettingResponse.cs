using System.Collections.Immutable;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>What a setting does to the signs of a patient of the library, as computed by the circulation model.</summary>
/// <param name="Setting">Which.</param>
/// <param name="PerUnit">
/// Change of each sign on its working scale for each unit of the setting: for speed and sweep a unit of the natural logarithm, for the
/// oxygen fractions one, for the end-expiratory pressure one cmH₂O. In the order of the signs.
/// </param>
public sealed record SettingResponse(SettingKind Setting, ImmutableArray<double> PerUnit);
