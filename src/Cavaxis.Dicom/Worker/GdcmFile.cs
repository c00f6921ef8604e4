using System.Globalization;
using Cavaxis.Dicom.Wire;

namespace Cavaxis.Dicom.Worker;

/// <summary>One file as GDCM holds it: its elements, and its frames one at a time.</summary>
internal sealed class GdcmFile : IDisposable
{
    /// <summary>Longest value that leaves the worker but pixels, bytes.</summary>
    private const uint LongestValue = 32 << 20;

    /// <summary>Items within items: deeper than any file has.</summary>
    private const int DeepestItem = 24;

    private const uint PixelTag = 0x7FE0_0010;

    /// <summary>Photometric Interpretation.</summary>
    private const uint Colours = 0x0028_0004;

    /// <summary>Transfer syntax of run-length coding.</summary>
    private const string RunLength = "1.2.840.10008.1.2.5";

    private readonly GdcmBinding binding;
    private readonly dynamic reader;
    private readonly dynamic file;
    private readonly dynamic set;

    private GdcmFile(GdcmBinding binding, string path, dynamic reader)
    {
        (this.binding, Path, this.reader) = (binding, path, reader);
        file = reader.GetFile();
        set = file.GetDataSet();
    }

    /// <summary>Where it lies.</summary>
    public string Path { get; }

    /// <summary>Reads a file.</summary>
    /// <exception cref="WorkerFaultException">GDCM cannot read it.</exception>
    public static GdcmFile Open(GdcmBinding binding, string path)
    {
        dynamic reader = binding.New("Reader");
        reader.SetFileName(path);
        return reader.Read() ? new GdcmFile(binding, path, reader) : throw new WorkerFaultException("GDCM finds no complete DICOM data in it");
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        set.Dispose();
        file.Dispose();
        reader.Dispose();
    }

    /// <summary>All elements on the wire: those of the file's head, then those of the data.</summary>
    public byte[] Elements()
    {
        using MemoryStream target = new();
        using BinaryWriter writer = new(target);
        dynamic head = file.GetHeader();
        writer.Write((string)head.GetDataSetTransferSyntax().GetString());
        WriteSet(writer, head, 0);
        WriteSet(writer, set, 0);
        writer.Flush();
        return target.ToArray();
    }

    /// <summary>The stored bytes of a fragment, or of pixels in one piece (fragment 0).</summary>
    public byte[] Fragment(int number)
    {
        dynamic element = Pixels();
        dynamic fragments = element.GetSequenceOfFragments();
        if (fragments is null)
        {
            return Bytes(element);
        }

        return number >= 0 && number < (int)fragments.GetNumberOfFragments()
            ? Bytes(fragments.GetFragment((uint)number))
            : throw new WorkerFaultException("it holds fewer fragments of pixels than it says");
    }

    /// <summary>One frame: first the layout that the decoder gave its samples, then the samples.</summary>
    public byte[][] Frame(int number)
    {
        FrameLayout layout = FrameLayout.Read(Number);
        dynamic element = Pixels();
        dynamic fragments = element.GetSequenceOfFragments();
        return fragments is null ? [layout.Written(Text(Colours)), Slice(element, number, layout)] : Decode(fragments, number, layout);
    }

    private byte[] Slice(dynamic element, int number, FrameLayout layout)
    {
        dynamic value = element.GetByteValue() ?? throw new WorkerFaultException("its pixels are empty");
        long length = layout.StoredLength(Text(Colours));
        long has = (uint)value.GetLength().GetValueLength();
        if (number < 0 || (number + 1) * length > has)
        {
            throw new WorkerFaultException(string.Create(CultureInfo.InvariantCulture, $"frame {number} needs {length} bytes from byte {number * length}, and the pixels are {has} bytes long"));
        }

        byte[] bytes = new byte[length];
        binding.Copy(value.GetVoidPointer(), number * length, bytes);
        return bytes;
    }

    private byte[][] Decode(dynamic fragments, int number, FrameLayout layout)
    {
        // GDCM 3.0.21 mixes up the bytes of run-length coded colour of more than 8 bits; a picture in wrong colours must not pass for the real one.
        if (layout.Samples > 1 && layout.BitsAllocated > 8 && (string)file.GetHeader().GetDataSetTransferSyntax().GetString() == RunLength)
        {
            throw new WorkerFaultException("run-length coded colour of more than 8 bits is not read");
        }

        (int first, int count) = FragmentRun.Of((int)fragments.GetNumberOfFragments(), layout.Frames, number, i => Bytes(fragments.GetFragment((uint)i)));
        dynamic own = binding.Make("SequenceOfFragments");
        for (int i = first; i < first + count; i++)
        {
            own.AddFragment(fragments.GetFragment((uint)i));
        }

        dynamic pixels = binding.New("DataElement", binding.New("Tag", PixelTag));
        pixels.SetValue(own.GetPointer());
        dynamic image = binding.New("Image");
        image.SetNumberOfDimensions(2u);
        image.SetDimension(0u, (uint)layout.Columns);
        image.SetDimension(1u, (uint)layout.Rows);
        image.SetTransferSyntax(file.GetHeader().GetDataSetTransferSyntax());
        image.SetPixelFormat(binding.New("PixelFormat", (ushort)layout.Samples, (ushort)layout.BitsAllocated, (ushort)layout.BitsStored, (ushort)layout.HighBit, (ushort)(layout.IsSigned ? 1 : 0)));
        image.SetPhotometricInterpretation(binding.New("PhotometricInterpretation", binding.Choice("PhotometricInterpretation", "GetPIType", Text(Colours))));
        image.SetPlanarConfiguration((uint)(layout.IsPlanar ? 1 : 0));
        image.SetDataElement(pixels);
        uint length = (uint)image.GetBufferLength();
        if (length > FrameLayout.LongestFrame)
        {
            throw new WorkerFaultException("one frame is larger than this program decodes");
        }

        byte[] bytes = new byte[length];
        if (!image.GetBuffer(bytes))
        {
            throw new WorkerFaultException(string.Create(CultureInfo.InvariantCulture, $"GDCM cannot decode frame {number}"));
        }

        byte[] head = layout.Decoded(image.GetPixelFormat(), (int)image.GetPlanarConfiguration()).Written(image.GetPhotometricInterpretation().GetString());
        GC.KeepAlive(own);
        GC.KeepAlive(pixels);
        return [head, bytes];
    }

    private void WriteSet(BinaryWriter writer, dynamic elements, int depth)
    {
        if (depth > DeepestItem)
        {
            throw new WorkerFaultException("its items are nested deeper than any image needs");
        }

        List<dynamic> found = [];
        for (uint from = 0; ;)
        {
            dynamic element = elements.FindNextDataElement(binding.New("Tag", from));
            uint tag = (uint)element.GetTag().GetElementTag();
            if (tag == uint.MaxValue || tag < from)
            {
                break;
            }

            found.Add(element);
            from = tag + 1;
        }

        writer.Write(found.Count);
        foreach (dynamic element in found)
        {
            WriteElement(writer, elements, element, depth);
        }
    }

    private void WriteElement(BinaryWriter writer, dynamic elements, dynamic element, int depth)
    {
        dynamic tag = element.GetTag();
        uint number = (uint)tag.GetElementTag();
        string vr = element.GetVR().toString();
        vr = vr.Length == 2 && vr != "??" && vr != "UN" ? vr : binding.RepresentationOf(file, elements, tag);
        writer.Write(number);
        writer.Write((byte)(vr.Length >= 2 && char.IsAsciiLetterUpper(vr[0]) ? vr[0] : 'U'));
        writer.Write((byte)(vr.Length >= 2 && char.IsAsciiLetterUpper(vr[1]) ? vr[1] : 'N'));
        if (number == PixelTag && depth == 0)
        {
            WritePixels(writer, element);
            return;
        }

        if (!element.IsEmpty() && (vr == "SQ" || element.IsUndefinedLength()))
        {
            dynamic items = element.GetValueAsSQ();
            if (items.GetPointer() is not null)
            {
                uint count = (uint)items.GetNumberOfItems();
                writer.Write((byte)ElementKind.Items);
                writer.Write((int)count);
                for (uint i = 1; i <= count; i++)
                {
                    dynamic item = items.GetItem(i);
                    WriteSet(writer, item.GetNestedDataSet(), depth + 1);
                    GC.KeepAlive(item);
                }

                GC.KeepAlive(items);
                return;
            }
        }

        byte[] bytes = Bytes(element);
        writer.Write((byte)ElementKind.Bytes);
        writer.Write(bytes.Length);
        writer.Write(bytes);
    }

    private static void WritePixels(BinaryWriter writer, dynamic element)
    {
        dynamic fragments = element.GetSequenceOfFragments();
        if (fragments is null)
        {
            dynamic value = element.GetByteValue();
            writer.Write((byte)ElementKind.Pixels);
            writer.Write(value is null ? 0L : (long)(uint)value.GetLength().GetValueLength());
            return;
        }

        int count = (int)fragments.GetNumberOfFragments();
        writer.Write((byte)ElementKind.Fragments);
        writer.Write(count);
        for (int i = 0; i < count; i++)
        {
            writer.Write((long)(uint)fragments.GetFragment((uint)i).GetVL().GetValueLength());
        }
    }

    private dynamic Pixels()
    {
        dynamic tag = binding.New("Tag", PixelTag);
        return set.FindDataElement(tag) ? set.GetDataElement(tag) : throw new WorkerFaultException("it holds no pixels");
    }

    private static byte[] Bytes(dynamic element)
    {
        dynamic value = element.GetByteValue();
        uint length = value is null ? 0u : (uint)value.GetLength().GetValueLength();
        if (length > LongestValue && (uint)element.GetTag().GetElementTag() is not (PixelTag or 0xFFFE_E000))
        {
            throw new WorkerFaultException("a value that is no picture is longer than 32 MB");
        }

        if (length == 0)
        {
            return [];
        }

        byte[] bytes = new byte[length];
        return value!.GetBuffer(bytes, length) ? bytes : throw new WorkerFaultException("a value is shorter than it says");
    }

    private string Text(uint tag) => System.Text.Encoding.Latin1.GetString(Value(tag)).Trim(' ', '\0');

    private byte[] Value(uint number)
    {
        dynamic tag = binding.New("Tag", number);
        return set.FindDataElement(tag) ? Bytes(set.GetDataElement(tag)) : [];
    }

    private int? Number(uint tag)
    {
        byte[] value = Value(tag);
        return tag == 0x0028_0008
            ? int.TryParse(System.Text.Encoding.Latin1.GetString(value).Trim(' ', '\0'), NumberStyles.Integer, CultureInfo.InvariantCulture, out int frames) ? frames : null
            : value.Length >= 2 ? BitConverter.ToUInt16(value) : null;
    }
}
