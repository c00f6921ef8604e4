using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;

namespace Cavaxis.Planning.Search;

/// <summary>One device on one side that could fill a slot of a configuration.</summary>
/// <param name="Slot">The slot.</param>
/// <param name="Cannula">The device.</param>
/// <param name="Side">The side.</param>
/// <param name="Ratio">Outer diameter over the vessel's median diameter.</param>
/// <param name="Drop">Pressure of the lumen that matters for the slot.</param>
/// <param name="ReturnDrop">Pressure of the return lumen of a dual-lumen cannula.</param>
/// <param name="Windows">Depth windows, for devices that reach the axis.</param>
/// <param name="Stops">Number of stops from the vessel's survey and obstacles on this side.</param>
/// <param name="Warnings">Number of such warnings.</param>
internal sealed record SlotOption(
    RoleSlot Slot,
    Cannula Cannula,
    BodySide Side,
    double Ratio,
    PressureTable Drop,
    PressureTable? ReturnDrop,
    DepthWindows? Windows,
    int Stops,
    int Warnings);
