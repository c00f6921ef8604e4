namespace Cavaxis.Reports.Charts;

/// <summary>How an axis spreads its values.</summary>
public enum ChartScale
{
    /// <summary>Equal differences, equal distances.</summary>
    Linear,

    /// <summary>Equal ratios, equal distances; every value must be above zero.</summary>
    Logarithmic,
}
