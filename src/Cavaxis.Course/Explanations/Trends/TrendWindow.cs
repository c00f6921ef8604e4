using System.Collections.Immutable;
using Cavaxis.Course.Explanations.Knowledge;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>Two windows of readings of one patient: before and now.</summary>
/// <param name="Support">Kind of support, the same in both.</param>
/// <param name="Signs">Quantities observed in either; each at most once.</param>
/// <param name="Settings">Settings that were changed between the windows.</param>
public sealed record TrendWindow(SupportKind Support, ImmutableArray<ObservedSign> Signs, ImmutableArray<SettingChange> Settings);
