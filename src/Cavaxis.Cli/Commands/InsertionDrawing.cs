using System.Text;
using Cavaxis.Planning.Insertion;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.InsertionReports;
using Cavaxis.Reports.Png;
using Cavaxis.Reports.Solids;

namespace Cavaxis.Cli.Commands;

/// <summary>The file of an insertion drawing; its ending says whether it is two views on paper or a model in three dimensions.</summary>
internal sealed class InsertionDrawing
{
    private readonly string path;
    private readonly Func<InsertionResult, byte[]> format;

    private InsertionDrawing(string path, Func<InsertionResult, byte[]> format) => (this.path, this.format) = (path, format);

    /// <summary>The file for a path.</summary>
    /// <param name="path">Path ending in .svg, .png, .glb or .stl.</param>
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">The ending is another one.</exception>
    public static InsertionDrawing For(string path) => Path.GetExtension(path).ToUpperInvariant() switch
    {
        ".SVG" => new InsertionDrawing(path, static result => Encoding.UTF8.GetBytes(SvgWriter.Write(InsertionSheet.Of(result), "insertion"))),
        ".PNG" => new InsertionDrawing(path, static result => PngWriter.Write(InsertionSheet.Of(result))),
        ".GLB" => new InsertionDrawing(path, static result => GlbWriter.Write(InsertionSolids.Of(result))),
        ".STL" => new InsertionDrawing(path, static result => StlWriter.Write(InsertionSolids.Of(result))),
        _ => throw new InputFaultException(new InputFault(
            FaultCode.BadOption,
            "--drawing",
            path.Length == 0 ? "(nothing)" : InputFault.Shown(path),
            "a file name ending in .svg, .png, .glb or .stl",
            "Choose by the ending: two views to scale (.svg, .png), or a model in three dimensions with colours in metres (.glb) or bodies alone in mm (.stl).")),
    };

    /// <summary>Draws and writes.</summary>
    /// <param name="result">A study with at least one venous cannula.</param>
    /// <exception cref="InputFaultException">The file cannot be written, or a PNG is asked for on a machine without the fonts.</exception>
    public void Write(InsertionResult result) => InputFile.WriteWhole(path, format(result));
}
