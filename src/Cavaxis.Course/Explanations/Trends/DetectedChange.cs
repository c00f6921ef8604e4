using System.Collections.Immutable;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>Whether and when something changed.</summary>
/// <param name="Hour">Best time of the change, hours as in the readings: halfway between the last reading before and the first after it; null for no change beyond noise.</param>
/// <param name="Changes">Quantities that changed then, clearest first.</param>
/// <param name="Sentence">The same in words.</param>
public sealed record DetectedChange(double? Hour, ImmutableArray<SeriesChange> Changes, string Sentence);
