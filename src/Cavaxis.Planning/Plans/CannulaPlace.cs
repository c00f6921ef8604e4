using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Plans;

/// <summary>Where a cannula of a plan is put instead of where it was planned.</summary>
/// <param name="Role">Which cannula.</param>
/// <param name="DepthCm">Depth from the skin, cm.</param>
/// <param name="TurnDeg">Turn of its side port away from the tricuspid valve, −180 to 180 degrees; without meaning for cannulae that return at their end.</param>
public sealed record CannulaPlace(CannulaRole Role, double DepthCm, double TurnDeg = 0);
