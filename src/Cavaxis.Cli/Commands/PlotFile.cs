using System.Text;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.CirculationReports;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Cli.Commands;

/// <summary>A picture file whose ending says its format.</summary>
internal sealed class PlotFile
{
    private readonly string path;

    private PlotFile(string path) => this.path = path;

    /// <summary>The picture file for a path.</summary>
    /// <param name="path">Path ending in .svg.</param>
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">The ending is another one.</exception>
    public static PlotFile For(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".SVG" => new PlotFile(path),
        _ => throw new InputFaultException(new InputFault(
            FaultCode.BadOption, "--plot", path.Length == 0 ? "(nothing)" : InputFault.Shown(path), "a file name ending in .svg", "Write the picture as .svg; other programs turn it into other formats.")),
    };

    /// <summary>Draws and writes.</summary>
    /// <param name="result">A settled result.</param>
    /// <exception cref="InputFaultException">The file cannot be written.</exception>
    public void Write(CirculationResult result)
    {
        Drawing drawing = CirculationSheet.Of(result);
        InputFile.WriteWhole(path, Encoding.UTF8.GetBytes(SvgWriter.Write(drawing, "circulation")));
    }
}
