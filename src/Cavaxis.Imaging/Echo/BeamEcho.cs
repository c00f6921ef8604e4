using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>The detected echoes before they become a picture: magnitude over lines and depth, one where soft tissue has its mean power.</summary>
/// <param name="Lines">Number of lines.</param>
/// <param name="Samples">Samples of a line.</param>
/// <param name="SampleMm">Depth from sample to sample, mm; the first lies on the face.</param>
/// <param name="Envelope">Magnitudes, lines side by side, one row a sample.</param>
public sealed record BeamEcho(int Lines, int Samples, double SampleMm, ReadOnlyMemory<float> Envelope)
{
    /// <summary>Magnitude at a line and a sample.</summary>
    /// <param name="line">Line.</param>
    /// <param name="sample">Sample.</param>
    /// <exception cref="InputFaultException">There is no such cell.</exception>
    public double At(int line, int sample)
    {
        int l = (int)Require.InRange(line, 0, Lines - 1, "line", "Give a line of the picture.");
        int s = (int)Require.InRange(sample, 0, Samples - 1, "sample", "Give a sample of the line.");
        return Envelope.Span[(s * Lines) + l];
    }
}
