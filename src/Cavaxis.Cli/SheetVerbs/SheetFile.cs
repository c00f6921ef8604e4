using Cavaxis.Bedside.CourseFiles;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary>A sheet's file whose ending says its format; written whole or not at all.</summary>
internal sealed class SheetFile
{
    private readonly string path;
    private readonly bool pdf;

    private SheetFile(string path, bool pdf) => (this.path, this.pdf) = (path, pdf);

    /// <summary>The file of a path.</summary>
    /// <param name="path">The option.</param>
    /// <returns>The file, not written yet.</returns>
    /// <exception cref="InputFaultException">None was given, or its ending is another one.</exception>
    public static SheetFile For(string? path)
    {
        string given = VerbText.Given(path, "--report");
        return Path.GetExtension(given).ToUpperInvariant() switch
        {
            ".HTML" => new SheetFile(given, false),
            ".PDF" => new SheetFile(given, true),
            _ => throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--report", InputFault.Shown(given), "a file name ending in .html or .pdf", "Choose one of the two formats by the ending.")),
        };
    }

    /// <summary>Writes it, for its owner alone.</summary>
    /// <param name="file">What to write.</param>
    /// <returns>What was written.</returns>
    /// <exception cref="InputFaultException">It cannot be written; what was there before is unharmed.</exception>
    public SheetWritten Write(CourseFile file)
    {
        byte[] bytes = pdf ? file.Pdf() : file.Html();
        InputFile.WriteWhole(path, bytes);
        return new SheetWritten(path, bytes.Length, file.Entries, file.Unread);
    }
}
