using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Fit;

/// <summary>
/// Every landmark of every sampled anatomy as a position along the vein: millimetres below the superior cavo-atrial
/// junction, negative above it. Made once for a set of anatomies and shared by all devices.
/// </summary>
internal sealed class AxisLandmarks
{
    private readonly double[][] landmarks;
    private readonly double[] jetFrom;
    private readonly double[] jetTo;
    private readonly Dictionary<VenousEntry, double[]> skin = [];

    /// <summary>Lays out the landmarks of all samples.</summary>
    /// <param name="samples">The sampled anatomies.</param>
    /// <param name="shift">A change laid on all of them; none for this patient as he is.</param>
    public AxisLandmarks(AxisSamples samples, AnatomyShift shift = default)
    {
        Count = samples.Count;
        landmarks = new double[Enum.GetValues<Landmark>().Length][];
        for (int i = 0; i < landmarks.Length; i++)
        {
            landmarks[i] = new double[Count];
        }

        jetFrom = new double[Count];
        jetTo = new double[Count];
        RotationWindowDeg = new double[Count];
        foreach (BodySide side in Enum.GetValues<BodySide>())
        {
            skin[new VenousEntry(AccessRoute.Jugular, side)] = new double[Count];
            skin[new VenousEntry(AccessRoute.FemoralVein, side)] = new double[Count];
        }

        Fill(samples, shift);
    }

    /// <summary>Number of sampled anatomies.</summary>
    public int Count { get; }

    /// <summary>Half width of the rotation within which a side jet still enters the annulus, degrees, per anatomy.</summary>
    public double[] RotationWindowDeg { get; }

    /// <summary>Positions of one landmark.</summary>
    public ReadOnlySpan<double> Of(Landmark landmark) => landmarks[(int)landmark];

    /// <summary>Positions of the skin where a cannula enters.</summary>
    public ReadOnlySpan<double> Skin(VenousEntry entry) => skin[entry];

    /// <summary>Highest port position from which half of the jet enters the annulus; above <see cref="JetTo"/> where there is none.</summary>
    public ReadOnlySpan<double> JetFrom => jetFrom;

    /// <summary>Lowest port position from which half of the jet enters the annulus.</summary>
    public ReadOnlySpan<double> JetTo => jetTo;

    private void Fill(AxisSamples samples, AnatomyShift shift)
    {
        ReadOnlySpan<double> span = samples[AxisDimension.AtrialSpan];
        ReadOnlySpan<double> frontal = samples[AxisDimension.CavalBendFrontal];
        ReadOnlySpan<double> sagittal = samples[AxisDimension.CavalBendSagittal];
        ReadOnlySpan<double> offset = samples[AxisDimension.MouthOffset];
        ReadOnlySpan<double> svc = samples[AxisDimension.SvcLength];
        ReadOnlySpan<double> hepatic = samples[AxisDimension.IcajToHepaticVein];
        ReadOnlySpan<double> renal = samples[AxisDimension.IcajToRenalVein];
        ReadOnlySpan<double> iliac = samples[AxisDimension.RenalVeinToIliacConfluence];
        ReadOnlySpan<double> fraction = samples[AxisDimension.TricuspidFraction];
        ReadOnlySpan<double> distance = samples[AxisDimension.TricuspidDistance];
        ReadOnlySpan<double> annulus = samples[AxisDimension.TricuspidDiameter];
        ReadOnlySpan<double> neck = samples[AxisDimension.RightNeckSkinToScaj];
        ReadOnlySpan<double> neckExtra = samples[AxisDimension.LeftNeckExtra];
        ReadOnlySpan<double> groin = samples[AxisDimension.RightGroinSkinToIcaj];
        ReadOnlySpan<double> groinExtra = samples[AxisDimension.LeftGroinExtra];
        double[] rightNeck = skin[new VenousEntry(AccessRoute.Jugular, BodySide.Right)];
        double[] leftNeck = skin[new VenousEntry(AccessRoute.Jugular, BodySide.Left)];
        double[] rightGroin = skin[new VenousEntry(AccessRoute.FemoralVein, BodySide.Right)];
        double[] leftGroin = skin[new VenousEntry(AccessRoute.FemoralVein, BodySide.Left)];
        for (int i = 0; i < Count; i++)
        {
            double chord = shift.SpanMm(span[i], offset[i]);
            double length = AtrialPath.LengthMm(chord, frontal[i], sagittal[i], offset[i]);
            landmarks[(int)Landmark.BrachiocephalicConfluence][i] = -svc[i];
            landmarks[(int)Landmark.TricuspidCentre][i] = fraction[i] * length;
            landmarks[(int)Landmark.Icaj][i] = length;
            landmarks[(int)Landmark.HepaticVein][i] = length + hepatic[i];
            landmarks[(int)Landmark.RenalVein][i] = length + renal[i];
            landmarks[(int)Landmark.IliacConfluence][i] = length + renal[i] + iliac[i];
            rightNeck[i] = -neck[i] - shift.NeckSkinToScajMm;
            leftNeck[i] = rightNeck[i] - neckExtra[i];
            rightGroin[i] = length + groin[i];
            leftGroin[i] = length + groin[i] + groinExtra[i];
            JetGeometry jet = new(length, chord, frontal[i], sagittal[i], offset[i], fraction[i], distance[i], annulus[i] / 2);
            (jetFrom[i], jetTo[i]) = jet.PortWindow();
            RotationWindowDeg[i] = jet.RotationWindowDeg();
        }
    }
}
