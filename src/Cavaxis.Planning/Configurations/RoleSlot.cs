using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Planning.Configurations;

/// <summary>One cannula that a configuration needs.</summary>
/// <param name="Role">What it does.</param>
/// <param name="Route">Vessel it enters.</param>
/// <param name="Families">Families that can do it.</param>
public sealed record RoleSlot(CannulaRole Role, AccessRoute Route, IReadOnlyList<CannulaFamily> Families);
