using System.Buffers.Binary;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Reports.Gif;

/// <summary>Writes grey frames as an endless GIF loop (GIF89a) with a palette of 256 greys, so that no grey is changed.</summary>
public static class GifWriter
{
    /// <summary>The frames as a file.</summary>
    /// <param name="frames">Grey frames of one size, at least one.</param>
    /// <param name="framesPerSecond">Speed; GIF keeps hundredths of a second, at least two a frame.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="InputFaultException">No frame, a coloured one, or frames of several sizes.</exception>
    public static byte[] Write(IReadOnlyList<ImageFrame> frames, double framesPerSecond)
    {
        ArgumentNullException.ThrowIfNull(frames);
        _ = Require.InRange(frames.Count, 1, 10_000, "gif.frames", "Give at least one frame.");
        (int width, int height) = (frames[0].Width, frames[0].Height);
        if (frames.Any(f => f.Channels != 1 || f.Width != width || f.Height != height))
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "gif.frames", "frames that differ in size or colour", "grey frames of one size", "Write the frames apart."));
        }

        int hundredths = Math.Max(2, (int)Math.Round(100 / Require.InRange(framesPerSecond, 0.1, 100, "gif.framesPerSecond", "Give a speed.")));
        using MemoryStream file = new();
        file.Write("GIF89a"u8);
        Word(file, width);
        Word(file, height);
        file.Write([0xF7, 0, 0]);
        for (int grey = 0; grey < 256; grey++)
        {
            file.Write([(byte)grey, (byte)grey, (byte)grey]);
        }

        file.Write([0x21, 0xFF, 11]);
        file.Write("NETSCAPE2.0"u8);
        file.Write([3, 1, 0, 0, 0]);
        foreach (ImageFrame frame in frames)
        {
            file.Write([0x21, 0xF9, 4, 4]);
            Word(file, hundredths);
            file.Write([0, 0, 0x2C, 0, 0, 0, 0]);
            Word(file, width);
            Word(file, height);
            file.Write([0, 8]);
            GifCodes.Write(frame.Samples.Span, file);
        }

        file.WriteByte(0x3B);
        return file.ToArray();
    }

    private static void Word(Stream to, int value)
    {
        Span<byte> two = stackalloc byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(two, (ushort)value);
        to.Write(two);
    }
}
