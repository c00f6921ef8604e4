using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Cavaxis.Dicom.Elements;

/// <summary>Elements of a file or of an item, in the order of their tags.</summary>
/// <param name="elements">The elements.</param>
internal sealed class DicomSet(IReadOnlyList<DicomElement> elements)
{
    private readonly Dictionary<uint, DicomElement> byTag = elements.GroupBy(static e => e.Tag).ToDictionary(static g => g.Key, static g => g.First());

    /// <summary>All of them.</summary>
    public IReadOnlyList<DicomElement> Elements => elements;

    /// <summary>The element of a tag; null where there is none.</summary>
    public DicomElement? Find(uint tag) => byTag.GetValueOrDefault(tag);

    /// <summary>The text of an element without padding; empty where there is none.</summary>
    public string Text(uint tag) => Find(tag) is { } element ? Encoding.Latin1.GetString(element.Value.Span).Trim(' ', '\0') : string.Empty;

    /// <summary>All numbers of an element, whether written as text or in binary; empty where there is none or one is no number.</summary>
    public IReadOnlyList<double> Numbers(uint tag)
    {
        if (Find(tag) is not { Items: null } element)
        {
            return [];
        }

        ReadOnlySpan<byte> bytes = element.Value.Span;
        int size = element.Vr switch { "US" or "SS" or "OW" => 2, "UL" or "SL" or "FL" or "OF" => 4, "FD" or "OD" => 8, _ => 0 };
        if (size == 0)
        {
            string text = Text(tag);
            string[] parts = text.Length == 0 ? [] : text.Split('\\');
            double[] read = new double[parts.Length];
            for (int i = 0; i < parts.Length; i++)
            {
                if (!double.TryParse(parts[i].Trim(' ', '\0'), NumberStyles.Float, CultureInfo.InvariantCulture, out read[i]) || !double.IsFinite(read[i]))
                {
                    return [];
                }
            }

            return read;
        }

        double[] numbers = new double[bytes.Length / size];
        for (int i = 0; i < numbers.Length; i++)
        {
            ReadOnlySpan<byte> at = bytes.Slice(i * size, size);
            numbers[i] = element.Vr switch
            {
                "US" or "OW" => BinaryPrimitives.ReadUInt16LittleEndian(at),
                "SS" => BinaryPrimitives.ReadInt16LittleEndian(at),
                "UL" => BinaryPrimitives.ReadUInt32LittleEndian(at),
                "SL" => BinaryPrimitives.ReadInt32LittleEndian(at),
                "FL" or "OF" => BinaryPrimitives.ReadSingleLittleEndian(at),
                _ => BinaryPrimitives.ReadDoubleLittleEndian(at),
            };
        }

        return numbers.All(double.IsFinite) ? numbers : [];
    }

    /// <summary>The first number of an element; null where there is none.</summary>
    public double? Number(uint tag) => Numbers(tag) is [double first, ..] ? first : null;

    /// <summary>The first number of an element as a whole one; null where there is none that fits.</summary>
    public int? Whole(uint tag) => Number(tag) is double number and >= int.MinValue and <= int.MaxValue ? (int)number : null;
}
