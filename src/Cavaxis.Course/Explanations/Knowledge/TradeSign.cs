using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>A sign that the circulation model does not give: trade knowledge.</summary>
/// <param name="Cause">Cause.</param>
/// <param name="Variant">The form of the cause that shows it; null for all.</param>
/// <param name="Quantity">Sign.</param>
/// <param name="Change">Change at full size on the working scale.</param>
/// <param name="Sd">Spread of that change, working scale.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record TradeSign(CauseOfChange Cause, string? Variant, ObservedQuantity Quantity, double Change, double Sd, Source Source);
