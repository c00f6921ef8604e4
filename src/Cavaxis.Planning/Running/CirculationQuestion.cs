using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Planning.Running;

/// <summary>What is asked of a circulation.</summary>
/// <param name="Start">The patient before the changes.</param>
/// <param name="Changes">Changes.</param>
/// <param name="Seconds">Length of a run over time from the moment of the changes on; null for none.</param>
/// <param name="Calibrated">True when the start was fitted to the readings of the case.</param>
public sealed record CirculationQuestion(CirculationParameters Start, IReadOnlyList<RequestedChange> Changes, double? Seconds, bool Calibrated)
{
    /// <summary>Time between samples of a run over time, s.</summary>
    public const double SpacingS = 0.02;

    /// <summary>The patient after the changes.</summary>
    public CirculationParameters Changed => ChangeReader.Apply(Start, Changes);
}
