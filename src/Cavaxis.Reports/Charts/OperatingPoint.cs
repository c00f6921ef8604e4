namespace Cavaxis.Reports.Charts;

/// <summary>A marked point with its uncertainty.</summary>
/// <param name="Name">The words beside it.</param>
/// <param name="X">Along the horizontal axis.</param>
/// <param name="Y">Along the vertical axis.</param>
/// <param name="XLow">Lower end of the horizontal interval; no bar where null.</param>
/// <param name="XHigh">Upper end of the horizontal interval.</param>
/// <param name="YLow">Lower end of the vertical interval; no bar where null.</param>
/// <param name="YHigh">Upper end of the vertical interval.</param>
public sealed record OperatingPoint(
    string Name, double X, double Y, double? XLow = null, double? XHigh = null, double? YLow = null, double? YHigh = null);
