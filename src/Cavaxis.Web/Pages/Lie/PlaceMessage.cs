namespace Cavaxis.Web.Pages.Lie;

/// <summary>One cannula as the drawing in the browser has it.</summary>
/// <param name="Role">Name of its role.</param>
/// <param name="DepthCm">Depth from the skin, cm.</param>
/// <param name="TurnDeg">Turn of its side port, degrees.</param>
public sealed record PlaceMessage(string Role, double DepthCm, double TurnDeg);
