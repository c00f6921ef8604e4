namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>One scan of a made-up chest.</summary>
internal sealed record PhantomSetting
{
    public int Seed { get; init; } = 1;

    public double NoiseHu { get; init; } = 20;

    /// <summary>Streaks: rows of a slice that are off, HU.</summary>
    public double StreakHu { get; init; }

    public bool Lead { get; init; }

    public bool Neighbour { get; init; } = true;

    public double SvcHu { get; init; } = 260;

    public double IvcHu { get; init; } = 160;

    /// <summary>Contrast that has sunk to the back: share of the contrast from front to back of the vein.</summary>
    public double Layering { get; init; }

    public double SvcFrontalDeg { get; init; }

    public double SvcSagittalDeg { get; init; }

    public double IvcFrontalDeg { get; init; }

    public double IvcSagittalDeg { get; init; }

    public double SvcRadiusMm { get; init; } = 8.5;

    public double IvcRadiusMm { get; init; } = 10.5;

    public double AtriumMm { get; init; } = 21;

    public double AtriumLengthMm { get; init; } = 32;

    public double VoxelMm { get; init; } = 1.25;

    public double SliceMm { get; init; } = 2;

    /// <summary>Turn of the stack of slices against the patient, degrees about two axes.</summary>
    public double ObliqueDeg { get; init; }

    public double BlurMm { get; init; } = 0.8;
}
