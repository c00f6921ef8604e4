namespace Cavaxis.Planning.Running;

/// <summary>Devices of the running circuit and the pressure laws fitted to them.</summary>
/// <param name="Pump">Identifier of the pump.</param>
/// <param name="PumpReferenceSpeedPerMin">Speed at which the speed ratio is one.</param>
/// <param name="MembraneLung">Identifier of the membrane lung.</param>
/// <param name="Cannulae">Identifiers of the cannulae with their roles in words.</param>
/// <param name="Tips">Where each tip was taken to lie, in words; none where the case does not say how deep.</param>
/// <param name="Drainage">Drop of drainage cannulae and tubing.</param>
/// <param name="Return">Drop of membrane lung, tubing and return cannulae.</param>
public sealed record CircuitParts(
    string Pump, double PumpReferenceSpeedPerMin, string MembraneLung, IReadOnlyList<string> Cannulae, IReadOnlyList<string> Tips, DropFit Drainage, DropFit Return);
