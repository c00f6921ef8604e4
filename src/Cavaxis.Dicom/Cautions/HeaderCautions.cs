using System.Globalization;
using Cavaxis.Dicom.Elements;
using Cavaxis.Dicom.Headers;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Dicom.Cautions;

/// <summary>Looks at a header for what a measurement would stumble over.</summary>
internal static class HeaderCautions
{
    /// <summary>Everything found, in the order of the header.</summary>
    public static IReadOnlyList<ImageCaution> Of(ImageHeader header, DicomSet data) => [.. Found(header, data)];

    private static IEnumerable<ImageCaution> Found(ImageHeader header, DicomSet data)
    {
        if (header.Kind == ImageKind.NoPicture)
        {
            yield return new ImageCaution("(7FE0,0010) Pixel Data", "none", "The file holds no picture: nothing can be shown or measured.", "Choose an image, not a report or a plan.");
            yield break;
        }

        if (data.Find(0x0028_0301) is not null && data.Text(0x0028_0301) == "YES")
        {
            yield return new ImageCaution("(0028,0301) Burned In Annotation", "YES", "Words stand in the pixels themselves; they may name the person.", "Mask them when the file is cleaned: `image clean --mask`.");
        }

        foreach (ImageCaution caution in header.Kind switch
        {
            ImageKind.UltrasoundStill or ImageKind.UltrasoundLoop => OfUltrasound(header, data),
            ImageKind.TomographySlice => OfTomography(header, data),
            _ => [],
        })
        {
            yield return caution;
        }
    }

    private static IEnumerable<ImageCaution> OfUltrasound(ImageHeader header, DicomSet data)
    {
        int stated = RegionReader.Count(data);
        IReadOnlyList<CalibratedRegion> regions = RegionReader.Read(data);
        int placed = regions.Count;
        foreach (ImageCaution caution in RegionCautions.Of(header, regions))
        {
            yield return caution;
        }

        if (stated > placed)
        {
            yield return new ImageCaution(
                "(0018,6011) Sequence of Ultrasound Regions", string.Create(CultureInfo.InvariantCulture, $"{stated - placed} of {stated} without a place"), "These regions are left out.", "Measure only in the regions that are listed.");
        }

        if (header.Frames > 1 && header.FrameTimeMs is null)
        {
            yield return new ImageCaution("(0018,1063) Frame Time", "none", "The time between the frames is not known: no rate and no duration can be given.", "Count beats or breaths instead of seconds, or export the loop with its frame time.");
        }
    }

    private static IEnumerable<ImageCaution> OfTomography(ImageHeader header, DicomSet data)
    {
        foreach ((uint tag, string name) in ((uint, string)[])[(0x0008_0016, "(0008,0016) SOP Class UID"), (0x0020_000E, "(0020,000E) Series Instance UID")])
        {
            if (data.Text(tag).Length == 0)
            {
                yield return new ImageCaution(name, "blank", "Slices cannot be told to belong to one series.", "Give only slices of one series in one folder: they are taken as one.");
            }
        }

        if (header.PixelSpacing is null)
        {
            yield return new ImageCaution("(0028,0030) Pixel Spacing", "none", "Nothing can be measured in this slice.", "Export the slice with its spacing.");
        }

        if (header.Position is null || header.Orientation is null)
        {
            yield return new ImageCaution("(0020,0032) Image Position, (0020,0037) Image Orientation", "none", "The slice has no place in the patient.", "Export the slice with position and orientation.");
        }
        else if (TableCautions.Of(header) is { } table)
        {
            yield return table;
        }
    }
}
