namespace Cavaxis.Dicom.Elements;

/// <summary>One element of a file.</summary>
/// <param name="Tag">Group and element, such as 0x0010_0010.</param>
/// <param name="Vr">Value representation, two letters (PS3.5 6.2).</param>
/// <param name="Value">Its bytes, little endian; empty where it has items or holds the pixels.</param>
/// <param name="Items">Its items; null where it is no sequence.</param>
/// <param name="Pixels">How its pixels are stored; null where it holds none.</param>
internal sealed record DicomElement(uint Tag, string Vr, ReadOnlyMemory<byte> Value, IReadOnlyList<DicomSet>? Items = null, StoredPixels? Pixels = null)
{
    /// <summary>True for an element of a maker's own: an odd group.</summary>
    public bool IsPrivate => (Tag >> 16) % 2 == 1;
}
