using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Calibration;

/// <summary>What a pixel is worth, where from, and how surely.</summary>
public sealed record LengthScale
{
    /// <summary>Largest relative error that a scale may have and still be one.</summary>
    public const double LargestRelativeSd = 0.25;

    internal LengthScale(double mmPerColumn, double mmPerRow, double relativeSd, ScaleOrigin origin, int? region, string words)
    {
        const string Remedy = "Check the region, or give a known length between two points farther apart.";
        MmPerColumn = Require.InRange(mmPerColumn, 1e-4, 10 * RegionJudge.LargestStepCm, "scale.mmPerColumn", Remedy);
        MmPerRow = Require.InRange(mmPerRow, 1e-4, 10 * RegionJudge.LargestStepCm, "scale.mmPerRow", Remedy);
        RelativeSd = Require.InRange(relativeSd, 0, LargestRelativeSd, "scale.relativeSd", Remedy);
        (Origin, Region, Words) = (origin, region, words);
    }

    /// <summary>From one column to the next, mm.</summary>
    public double MmPerColumn { get; }

    /// <summary>From one row to the next, mm.</summary>
    public double MmPerRow { get; }

    /// <summary>Relative standard deviation of a step.</summary>
    public double RelativeSd { get; }

    /// <summary>True where rows and columns err together, as they do by a known length; false where each errs by itself.</summary>
    public bool ErrsAsOne => Origin == ScaleOrigin.KnownLength;

    /// <summary>Where it comes from.</summary>
    public ScaleOrigin Origin { get; }

    /// <summary>Number of the region, from 1; null where there is none.</summary>
    public int? Region { get; }

    /// <summary>For people: where the scale comes from.</summary>
    public string Words { get; }
}
