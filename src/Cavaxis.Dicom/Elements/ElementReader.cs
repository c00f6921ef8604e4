using Cavaxis.Dicom.Wire;

namespace Cavaxis.Dicom.Elements;

/// <summary>Reads the elements that the worker sends.</summary>
internal static class ElementReader
{
    private const int DeepestItem = 32;

    /// <summary>Transfer syntax, head and data of a file.</summary>
    /// <param name="bytes">What the worker sent.</param>
    /// <returns>Null where the bytes are none of its.</returns>
    public static (string TransferSyntax, DicomSet Head, DicomSet Data)? Read(byte[] bytes)
    {
        using BinaryReader reader = new(new MemoryStream(bytes, writable: false));
        try
        {
            return (reader.ReadString(), Set(reader, 0), Set(reader, 0));
        }
        catch (Exception broken) when (broken is EndOfStreamException or IOException or ArgumentException or FormatException or InvalidDataException)
        {
            return null;
        }
    }

    private static DicomSet Set(BinaryReader reader, int depth)
    {
        int count = Count(reader, depth);
        List<DicomElement> elements = [];
        for (int i = 0; i < count; i++)
        {
            uint tag = reader.ReadUInt32();
            string vr = new([(char)reader.ReadByte(), (char)reader.ReadByte()]);
            elements.Add((ElementKind)reader.ReadByte() switch
            {
                ElementKind.Bytes => new DicomElement(tag, vr, reader.ReadBytes(Count(reader, depth))),
                ElementKind.Items => new DicomElement(tag, "SQ", ReadOnlyMemory<byte>.Empty, [.. Enumerable.Range(0, Count(reader, depth)).Select(_ => Set(reader, depth + 1))]),
                ElementKind.Pixels => new DicomElement(tag, vr, ReadOnlyMemory<byte>.Empty, null, new StoredPixels(false, [reader.ReadInt64()])),
                ElementKind.Fragments => new DicomElement(tag, vr, ReadOnlyMemory<byte>.Empty, null, new StoredPixels(true, [.. Enumerable.Range(0, Count(reader, depth)).Select(_ => reader.ReadInt64())])),
                _ => throw new InvalidDataException(),
            });
        }

        return new DicomSet(elements);
    }

    private static int Count(BinaryReader reader, int depth) =>
        reader.ReadInt32() is >= 0 and int count && count <= reader.BaseStream.Length && depth <= DeepestItem ? count : throw new InvalidDataException();
}
