using Cavaxis.Circulation.Signals;

namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>A published range of a bedside quantity.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Low">Lowest.</param>
/// <param name="High">Highest.</param>
/// <param name="Source">Where it stands.</param>
public sealed record PublishedRange(CirculationQuantity Quantity, double Low, double High, string Source);
