using Cavaxis.Dicom.Elements;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Dicom.Headers;

/// <summary>Reads the Sequence of Ultrasound Regions (0018,6011) as it stands (PS3.3 C.8.5.5).</summary>
internal static class RegionReader
{
    /// <summary>All regions that state where they lie.</summary>
    public static IReadOnlyList<CalibratedRegion> Read(DicomSet data) =>
        data.Find(0x0018_6011) is { Items: { } items } ? [.. items.Select(Region).OfType<CalibratedRegion>()] : [];

    /// <summary>How many items there are, those that state no place included.</summary>
    public static int Count(DicomSet data) => data.Find(0x0018_6011)?.Items?.Count ?? 0;

    private static CalibratedRegion? Region(DicomSet item)
    {
        if (item.Whole(0x0018_6018) is not int left || item.Whole(0x0018_601A) is not int top || item.Whole(0x0018_601C) is not int right || item.Whole(0x0018_601E) is not int bottom)
        {
            return null;
        }

        return new CalibratedRegion(
            Choice(item.Whole(0x0018_6012), RegionFormat.None),
            Choice(item.Whole(0x0018_6014), RegionContent.Other),
            left,
            top,
            right,
            bottom,
            Choice(item.Whole(0x0018_6024), RegionUnit.None),
            Choice(item.Whole(0x0018_6026), RegionUnit.None),
            item.Number(0x0018_602C) ?? 0,
            item.Number(0x0018_602E) ?? 0,
            item.Whole(0x0018_6020),
            item.Whole(0x0018_6022),
            item.Number(0x0018_6028),
            item.Number(0x0018_602A),
            (uint)(item.Number(0x0018_6016) ?? 0));
    }

    private static T Choice<T>(int? number, T otherwise)
        where T : struct, Enum => number is int value && Enum.IsDefined(typeof(T), value) ? (T)Enum.ToObject(typeof(T), value) : otherwise;
}
