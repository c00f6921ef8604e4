using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Measurement;

/// <summary>Which frame of which file: a hash leads back to the file and to nothing about the patient.</summary>
public sealed record FrameIdentity
{
    /// <summary>A frame.</summary>
    /// <param name="fileSha256">SHA-256 of the file, 64 small hexadecimal digits.</param>
    /// <param name="frame">Number of the frame in the file, from 1.</param>
    /// <exception cref="InputFaultException">No such hash, or no such number.</exception>
    public FrameIdentity(string fileSha256, int frame)
    {
        ArgumentNullException.ThrowIfNull(fileSha256);
        if (fileSha256.Length != 64 || !fileSha256.All(static c => char.IsAsciiHexDigitLower(c) || char.IsAsciiDigit(c)))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MalformedText, "fileSha256", InputFault.Shown(fileSha256), "64 small hexadecimal digits", "Give the SHA-256 of the file that holds the frame."));
        }

        (FileSha256, Frame) = (fileSha256, (int)Require.InRange(frame, 1, 1_000_000, "frame", "Frames are counted from 1."));
    }

    /// <summary>SHA-256 of the file.</summary>
    public string FileSha256 { get; }

    /// <summary>Number of the frame, from 1.</summary>
    public int Frame { get; }

    /// <summary>The frame and the beginning of the hash.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"frame {Frame} of file {FileSha256[..12]}");
}
