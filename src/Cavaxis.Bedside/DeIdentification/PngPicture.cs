using System.Buffers.Binary;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.DeIdentification;

/// <summary>A PNG file with nothing but its picture: texts, times, places and whatever else hangs on it are dropped chunk by chunk (PNG, third edition, section 5).</summary>
public static class PngPicture
{
    private const int Frame = 12;

    private static readonly string[] Kept = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "sRGB", "pHYs"];

    private static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The picture alone.</summary>
    /// <param name="file">A PNG file.</param>
    /// <returns>A PNG file that shows the same.</returns>
    /// <exception cref="InputFaultException">Not a whole PNG file.</exception>
    public static byte[] Of(ReadOnlySpan<byte> file)
    {
        if (!file.StartsWith(Signature))
        {
            throw Refused();
        }

        List<byte> kept = [.. Signature];
        ReadOnlySpan<byte> rest = file[Signature.Length..];
        while (rest.Length >= Frame)
        {
            uint length = BinaryPrimitives.ReadUInt32BigEndian(rest);
            if (length > rest.Length - Frame)
            {
                throw Refused();
            }

            int whole = (int)length + Frame;
            string type = System.Text.Encoding.ASCII.GetString(rest.Slice(4, 4));
            if (Kept.Contains(type))
            {
                kept.AddRange(rest[..whole]);
            }

            if (type == "IEND")
            {
                // What stands behind the end is no picture.
                return [.. kept];
            }

            rest = rest[whole..];
        }

        throw Refused();
    }

    private static InputFaultException Refused() => new(new InputFault(FaultCode.MalformedText, "attachment", "no whole PNG file", "a PNG picture", "Export the picture again."));
}
