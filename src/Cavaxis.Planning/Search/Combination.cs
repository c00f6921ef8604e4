using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Search;

/// <summary>One choice of devices and sides for a configuration, with the numbers needed to compare it.</summary>
/// <param name="Options">One option for each slot, in the configuration's order.</param>
/// <param name="FlowLPerMin">Flow it carries within the usual pressure limits, at most the need.</param>
/// <param name="InletMmHg">Inlet pressure at that flow.</param>
/// <param name="ReturnMmHg">Pressure after the lung at that flow.</param>
/// <param name="FitCount">Anatomies in which all its cannulae fit together.</param>
/// <param name="Values">Value of each criterion, in the rule book's order.</param>
/// <param name="Score">Weighted mean of the points.</param>
/// <param name="MissesItsPurpose">True when it carries less than half of the need or fits hardly any anatomy.</param>
internal sealed record Combination(
    SlotOption[] Options,
    double FlowLPerMin,
    double InletMmHg,
    double ReturnMmHg,
    int FitCount,
    double[] Values,
    double Score,
    bool MissesItsPurpose)
{
    /// <summary>True when a vessel forbids it or it misses its purpose.</summary>
    public bool IsStopped { get; } = MissesItsPurpose || Options.Any(option => option.Stops > 0);

    /// <summary>Warnings of its vessels.</summary>
    public int Warnings { get; } = Options.Sum(option => option.Warnings);

    /// <summary>The devices without their sides, for a stable order.</summary>
    public string Devices => DevicesOf(Options);

    /// <summary>The devices of a choice without their sides.</summary>
    /// <param name="options">One option for each slot.</param>
    /// <returns>The identifiers, joined.</returns>
    public static string DevicesOf(SlotOption[] options) => string.Join("+", options.Select(option => option.Cannula.Id));

    /// <summary>The option that drains (a dual-lumen cannula drains too).</summary>
    public SlotOption Draining => Options.First(option => option.Slot.Role is CannulaRole.Drainage or CannulaRole.DualLumen);

    /// <summary>The option of a role, or null.</summary>
    /// <param name="role">The role.</param>
    /// <returns>The option, or null.</returns>
    public SlotOption? InRole(CannulaRole role) => Options.FirstOrDefault(option => option.Slot.Role == role);

    /// <summary>Purpose of the lumen that a role uses for its main flow.</summary>
    /// <param name="role">The role.</param>
    /// <returns>Drainage or return.</returns>
    public static LumenPurpose PurposeOf(CannulaRole role) =>
        role is CannulaRole.Drainage or CannulaRole.DualLumen ? LumenPurpose.Drainage : LumenPurpose.Return;
}
