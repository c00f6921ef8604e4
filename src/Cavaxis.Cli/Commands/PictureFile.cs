using System.Text;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Png;

namespace Cavaxis.Cli.Commands;

/// <summary>A picture file whose ending says its format.</summary>
internal sealed class PictureFile
{
    private readonly string path;
    private readonly Func<Drawing, byte[]> format;

    private PictureFile(string path, Func<Drawing, byte[]> format) => (this.path, this.format) = (path, format);

    /// <summary>The picture file for a path.</summary>
    /// <param name="option">Name of the option, for faults.</param>
    /// <param name="path">Path ending in .svg or .png.</param>
    /// <param name="name">Name of the drawing inside an SVG: letters, digits, hyphens.</param>
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">The ending is another one.</exception>
    public static PictureFile For(string option, string path, string name) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".SVG" => new PictureFile(path, drawing => Encoding.UTF8.GetBytes(SvgWriter.Write(drawing, name))),
        ".PNG" => new PictureFile(path, PngWriter.Write),
        _ => throw new InputFaultException(new InputFault(
            FaultCode.BadOption, option, path.Length == 0 ? "(nothing)" : InputFault.Shown(path), "a file name ending in .svg or .png", "Choose one of the two formats by the ending.")),
    };

    /// <summary>Writes a drawing.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <exception cref="InputFaultException">The file cannot be written, or a PNG is asked for on a machine without the fonts.</exception>
    public void Write(Drawing drawing) => InputFile.WriteWhole(path, format(drawing));
}
