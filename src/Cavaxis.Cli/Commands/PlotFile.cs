using System.Text;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.CirculationReports;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Png;

namespace Cavaxis.Cli.Commands;

/// <summary>A picture file whose ending says its format.</summary>
internal sealed class PlotFile
{
    private readonly string path;
    private readonly Func<Drawing, byte[]> format;

    private PlotFile(string path, Func<Drawing, byte[]> format) => (this.path, this.format) = (path, format);

    /// <summary>The picture file for a path.</summary>
    /// <param name="path">Path ending in .svg or .png.</param>
    /// <param name="option">Name of the option that asked for it.</param>
    /// <param name="name">What the drawing is of, for identifiers inside it.</param>
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">The ending is another one.</exception>
    public static PlotFile For(string path, string option = "--plot", string name = "circulation") => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".SVG" => new PlotFile(path, drawing => Encoding.UTF8.GetBytes(SvgWriter.Write(drawing, name))),
        ".PNG" => new PlotFile(path, PngWriter.Write),
        _ => throw new InputFaultException(new InputFault(
            FaultCode.BadOption, option, path.Length == 0 ? "(nothing)" : InputFault.Shown(path), "a file name ending in .svg or .png", "Choose one of the two formats by the ending.")),
    };

    /// <summary>Draws and writes.</summary>
    /// <param name="result">A settled result.</param>
    /// <exception cref="InputFaultException">The file cannot be written, or a PNG is asked for on a machine without the fonts.</exception>
    public void Write(CirculationResult result) => Write(CirculationSheet.Of(result));

    /// <summary>Writes a drawing.</summary>
    /// <param name="drawing">The drawing.</param>
    public void Write(Drawing drawing) => InputFile.WriteWhole(path, format(drawing));
}
