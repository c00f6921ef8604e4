using System.Collections.Immutable;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>What one size of one form of a cause does to the signs of one patient.</summary>
/// <param name="Cause">Cause.</param>
/// <param name="Variant">Form, such as <c>tamponade</c>.</param>
/// <param name="Severity">Size, 0 to 1; trade signs go with it.</param>
/// <param name="Changes">Change of each sign on its working scale, in the order of the signs.</param>
public sealed record CausePattern(CauseOfChange Cause, string Variant, double Severity, ImmutableArray<double> Changes);
