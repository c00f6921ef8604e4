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
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">The ending is another one.</exception>
    public static PlotFile For(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".SVG" => new PlotFile(path, static drawing => Encoding.UTF8.GetBytes(SvgWriter.Write(drawing, "circulation"))),
        ".PNG" => new PlotFile(path, PngWriter.Write),
        _ => throw new InputFaultException(new InputFault(
            FaultCode.BadOption, "--plot", path.Length == 0 ? "(nothing)" : InputFault.Shown(path), "a file name ending in .svg or .png", "Choose one of the two formats by the ending.")),
    };

    /// <summary>Draws and writes.</summary>
    /// <param name="result">A settled result.</param>
    /// <exception cref="InputFaultException">The file cannot be written, or a PNG is asked for on a machine without the fonts.</exception>
    public void Write(CirculationResult result) => InputFile.WriteWhole(path, format(CirculationSheet.Of(result)));
}
