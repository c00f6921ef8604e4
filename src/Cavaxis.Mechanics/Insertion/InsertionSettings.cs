using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>How finely an insertion is followed. Numbers of the method, not of the body.</summary>
public sealed record InsertionSettings
{
    private readonly double spacingMm = 5;
    private readonly double incrementMm = 5;
    private readonly double advanceMm = 5;
    private readonly double withdrawalMm = 5;

    /// <summary>Length of the pieces of the centreline, 0.5 to 50 mm.</summary>
    public double SpacingMm
    {
        get => spacingMm;
        init => spacingMm = Require.InRange(value, 0.5, 50, "settings.spacingMm", "Give a length in mm.");
    }

    /// <summary>Length moved between two states of rest, 0.1 to 50 mm; halved where the rod does not come to rest.</summary>
    public double IncrementMm
    {
        get => incrementMm;
        init => incrementMm = Require.InRange(value, 0.1, 50, "settings.incrementMm", "Give a length in mm.");
    }

    /// <summary>Length that a cannula goes forward over its wire between two states of rest, 0.1 to 50 mm; halved in the same way. The wire has found the way for it.</summary>
    public double AdvanceMm
    {
        get => advanceMm;
        init => advanceMm = Require.InRange(value, 0.1, 50, "settings.advanceMm", "Give a length in mm.");
    }

    /// <summary>Length drawn back between two states of rest, 0.1 to 50 mm; halved in the same way. What is drawn out leaves its way open, so it may be longer.</summary>
    public double WithdrawalMm
    {
        get => withdrawalMm;
        init => withdrawalMm = Require.InRange(value, 0.1, 50, "settings.withdrawalMm", "Give a length in mm.");
    }

    /// <summary>Times that an increment may be halved before the step is given up.</summary>
    public int MostHalvings { get; init; } = 5;

    /// <summary>Turn between two states of rest, rad.</summary>
    public double TurnRad { get; init; } = 0.2;

    /// <summary>How exactly each state is brought to rest.</summary>
    public RelaxationSettings Relaxation { get; init; } = new() { ToleranceN = 1e-5, FrictionToleranceN = 5e-4, MostSteps = 150, MostRounds = 25 };
}
