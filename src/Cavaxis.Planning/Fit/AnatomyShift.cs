namespace Cavaxis.Planning.Fit;

/// <summary>
/// A change laid on every sampled anatomy, to ask how much nearer, shorter or longer a patient would have to be for a device
/// to fit. Not a model of growth: nothing else moves with it.
/// </summary>
/// <param name="NeckSkinToScajMm">Added to the depth from the skin of the neck to the superior junction, mm; negative for a lower entry.</param>
/// <param name="AtrialSpanMm">Added to the distance between the cavo-atrial junctions, mm.</param>
public readonly record struct AnatomyShift(double NeckSkinToScajMm, double AtrialSpanMm)
{
    private const double LeastSpanToOffset = 1.25;

    /// <summary>The changed span; it stays longer than the sideways offset of the mouths, without which there is no path.</summary>
    /// <param name="spanMm">Span of one anatomy.</param>
    /// <param name="offsetMm">Its offset.</param>
    /// <returns>The changed span, mm.</returns>
    internal double SpanMm(double spanMm, double offsetMm) => AtrialSpanMm == 0
        ? spanMm
        : Math.Max(spanMm + AtrialSpanMm, Math.Max(1, LeastSpanToOffset * Math.Abs(offsetMm)));
}
