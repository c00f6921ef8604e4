using Cavaxis.Quantities;

namespace Cavaxis.Imaging.Calibration;

/// <summary>How far the scale of a machine may be off.</summary>
public static class ScaleTolerance
{
    /// <summary>
    /// Relative standard deviation of a length step, each direction by itself: within 2 % for lengths along and across the beam, taken as even within that: 0.02/√3.
    /// </summary>
    public const double LengthRelativeSd = 0.02 / 1.7320508075688772;

    /// <summary>Relative standard deviation of a speed step. Taken as that of lengths: both rest on the same speed of sound and clock.</summary>
    public const double SpeedRelativeSd = LengthRelativeSd;

    /// <summary>Where the two per cent come from.</summary>
    public static Source Source { get; } = new(
        "accuracy that makers state for lengths on a phantom, along and across the beam: within 2 % (plus 1 % of full depth, which is left to the placing error)", Certainty.SeenSecondHand);
}
