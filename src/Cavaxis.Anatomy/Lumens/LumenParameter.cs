using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>One row of the table of the lumen's own dimensions.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="Scale">Scale on which it is Gaussian.</param>
/// <param name="Middle">Median (logarithmic) or mean (plain): degrees, or a share.</param>
/// <param name="Spread">Standard deviation: relative (logarithmic) or in degrees or shares (plain).</param>
/// <param name="Low">Lowest value that is drawn; lower draws are set to it.</param>
/// <param name="High">Highest value that is drawn; higher draws are set to it.</param>
/// <param name="Source">Where middle and spread come from.</param>
public sealed record LumenParameter(
    LumenDimension Dimension, LatentScale Scale, double Middle, double Spread, double Low, double High, Source Source)
{
    /// <summary>Unit: degrees, or a share of another dimension.</summary>
    public string Unit => Scale == LatentScale.Plain && High > 2 ? "deg" : "1";
}
