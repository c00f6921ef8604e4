namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>One scan of the second family of made-up chests: how the veins bend, what flows in them and what lies beside them.</summary>
internal sealed record BentSetting
{
    public int Seed { get; init; } = 1;

    /// <summary>What is peculiar about it.</summary>
    public BentKind Kind { get; init; }

    public double NoiseHu { get; init; } = 20;

    public double SvcHu { get; init; } = 250;

    public double IvcHu { get; init; } = 160;

    /// <summary>Lean of a vein, mm aside per mm down: right and back.</summary>
    public (double Right, double Back) SvcLean { get; init; }

    public (double Right, double Back) IvcLean { get; init; }

    /// <summary>How far the waves of a vein swing out, mm.</summary>
    public double SvcSwingMm { get; init; }

    public double IvcSwingMm { get; init; }

    public double SvcRadiusMm { get; init; } = 8;

    /// <summary>Radius of the circle with the area of the flat IVC.</summary>
    public double IvcRadiusMm { get; init; } = 10;

    /// <summary>Width of the IVC over its depth.</summary>
    public double IvcFlat { get; init; } = 1.3;

    public double AtriumMm { get; init; } = 22;

    public double AtriumHalfMm { get; init; } = 32;

    public double VoxelMm { get; init; } = 1.2;

    public double SliceMm { get; init; } = 2;
}
