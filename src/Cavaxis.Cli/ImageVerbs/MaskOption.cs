using System.Globalization;
using Cavaxis.Dicom.Identity;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Reads the option --mask.</summary>
internal static class MaskOption
{
    private const string OutsideRegions = "outside-regions";

    /// <summary>The mask.</summary>
    /// <param name="value">As given.</param>
    /// <returns>Null where none was asked for.</returns>
    /// <exception cref="InputFaultException">It is neither a rectangle nor the word.</exception>
    public static PixelMask? Read(string? value)
    {
        if (value is null)
        {
            return null;
        }

        if (value == OutsideRegions)
        {
            return PixelMask.OutsideRegions;
        }

        string[] parts = value.Split(',');
        int[] numbers = new int[parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            if (parts.Length != 4 || !int.TryParse(parts[i], NumberStyles.None, CultureInfo.InvariantCulture, out numbers[i]))
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.BadOption, "--mask", InputFault.Shown(value), $"left,top,width,height in pixels, or {OutsideRegions}", "Look at the frame for where words stand, such as --mask 0,0,640,60."));
            }
        }

        return PixelMask.Rectangle(numbers[0], numbers[1], numbers[2], numbers[3]);
    }
}
