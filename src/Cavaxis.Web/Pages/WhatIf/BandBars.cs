using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Places of two bands in a picture 0 to 100 wide.</summary>
/// <param name="BeforeLow">Lower end before.</param>
/// <param name="BeforeMiddle">Median before.</param>
/// <param name="BeforeHigh">Upper end before.</param>
/// <param name="AfterLow">Lower end after.</param>
/// <param name="AfterMiddle">Median after.</param>
/// <param name="AfterHigh">Upper end after.</param>
public sealed record BandBars(double BeforeLow, double BeforeMiddle, double BeforeHigh, double AfterLow, double AfterMiddle, double AfterHigh)
{
    private const double Margin = 4;

    /// <summary>Both on one scale that holds them.</summary>
    /// <param name="before">Before.</param>
    /// <param name="after">After.</param>
    public static BandBars Of(Estimate before, Estimate after)
    {
        double low = Math.Min(before.Low, after.Low);
        double span = Math.Max(Math.Max(before.High, after.High) - low, 1e-9 * (1 + Math.Abs(low)));
        double At(double value) => Math.Round(Margin + ((100 - (2 * Margin)) * (value - low) / span), 1);
        return new BandBars(At(before.Low), At(before.Value), At(before.High), At(after.Low), At(after.Value), At(after.High));
    }
}
