using System.Buffers.Binary;
using System.Text;
using Cavaxis.Dicom.Elements;

namespace Cavaxis.Dicom.Identity;

/// <summary>Writes a file as explicit little endian (PS3.5 7.1, PS3.10 7.1); its pixels follow as they are given.</summary>
/// <param name="target">Where to.</param>
internal sealed class DicomWriter(Stream target)
{
    private const uint Undefined = uint.MaxValue;
    private const uint Item = 0xFFFE_E000;
    private const uint ItemEnd = 0xFFFE_E00D;
    private const uint SequenceEnd = 0xFFFE_E0DD;

    /// <summary>Identifier of this program as a writer: below 2.25, drawn once.</summary>
    private const string Implementation = "2.25.206371947716518923451706229513287163512";

    /// <summary>Head of the file.</summary>
    public void Head(string sopClass, string sopInstance, string transferSyntax)
    {
        using MemoryStream group = new();
        DicomWriter writer = new(group);
        writer.Element(new DicomElement(0x0002_0001, "OB", new byte[] { 0, 1 }));
        writer.Element(Text(0x0002_0002, "UI", sopClass));
        writer.Element(Text(0x0002_0003, "UI", sopInstance));
        writer.Element(Text(0x0002_0010, "UI", transferSyntax));
        writer.Element(Text(0x0002_0012, "UI", Implementation));
        writer.Element(Text(0x0002_0013, "SH", "CAVAXIS"));
        target.Write(new byte[128]);
        target.Write("DICM"u8);
        byte[] length = new byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(length, (uint)group.Length);
        Element(new DicomElement(0x0002_0000, "UL", length));
        group.WriteTo(target);
    }

    /// <summary>All elements of a set.</summary>
    public void Set(DicomSet set)
    {
        foreach (DicomElement element in set.Elements.OrderBy(static e => e.Tag))
        {
            Element(element);
        }
    }

    /// <summary>An element whose bytes follow in one piece.</summary>
    public void Start(uint tag, string vr, uint length)
    {
        Number(tag);
        target.Write(Encoding.ASCII.GetBytes(vr));
        target.Write([0, 0]);
        Long(length);
    }

    /// <summary>Starts pixels in fragments; no table of their places is written.</summary>
    public void StartFragments(uint tag)
    {
        Start(tag, "OB", Undefined);
        Number(Item);
        Long(0);
    }

    /// <summary>One fragment.</summary>
    public void Fragment(ReadOnlySpan<byte> bytes)
    {
        Number(Item);
        Long((uint)(bytes.Length + (bytes.Length % 2)));
        target.Write(bytes);
        Pad(bytes.Length, 0);
    }

    /// <summary>Ends the fragments.</summary>
    public void EndFragments()
    {
        Number(SequenceEnd);
        Long(0);
    }

    /// <summary>A text element.</summary>
    public static DicomElement Text(uint tag, string vr, string text) => new(tag, vr, Encoding.Latin1.GetBytes(text));

    private void Element(DicomElement element)
    {
        if (element.Items is not null)
        {
            Start(element.Tag, "SQ", Undefined);
            foreach (DicomSet item in element.Items)
            {
                Number(Item);
                Long(Undefined);
                Set(item);
                Number(ItemEnd);
                Long(0);
            }

            EndFragments();
            return;
        }

        ReadOnlySpan<byte> value = element.Value.Span;
        int length = value.Length + (value.Length % 2);
        string vr = element.Vr is "US" or "SS" && length > ushort.MaxValue ? "OW" : element.Vr;
        bool isLong = vr is "OB" or "OD" or "OF" or "OL" or "OV" or "OW" or "SQ" or "SV" or "UC" or "UN" or "UR" or "UT" or "UV";
        if (!isLong && length > ushort.MaxValue)
        {
            (vr, isLong) = ("UN", true);
        }

        if (isLong)
        {
            Start(element.Tag, vr, (uint)length);
        }
        else
        {
            Number(element.Tag);
            target.Write(Encoding.ASCII.GetBytes(vr));
            target.Write([(byte)length, (byte)(length >> 8)]);
        }

        target.Write(value);
        Pad(value.Length, vr is "AE" or "AS" or "CS" or "DA" or "DS" or "DT" or "IS" or "LO" or "LT" or "PN" or "SH" or "ST" or "TM" or "UC" or "UR" or "UT" ? (byte)' ' : (byte)0);
    }

    private void Pad(int length, byte with)
    {
        if (length % 2 == 1)
        {
            target.WriteByte(with);
        }
    }

    private void Number(uint tag) => target.Write([(byte)(tag >> 16), (byte)(tag >> 24), (byte)tag, (byte)(tag >> 8)]);

    private void Long(uint length)
    {
        Span<byte> bytes = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, length);
        target.Write(bytes);
    }
}
