using System.Globalization;
using Cavaxis.Dicom.Series;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>The files of a folder of images.</summary>
internal static class ImageFolder
{
    /// <summary>All files of a folder, by name; its subfolders are not looked into.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="InputFaultException">There are none, or more than are read.</exception>
    public static string[] Files(string folder)
    {
        string[] files = [.. Directory.EnumerateFiles(folder).Take(SeriesReader.MostFiles + 1).Order(StringComparer.Ordinal)];
        return files.Length is > 0 and <= SeriesReader.MostFiles
            ? files
            : throw new InputFaultException(new InputFault(
                FaultCode.WrongLength,
                InputFault.Shown(folder),
                files.Length == 0 ? "no file" : "more files",
                string.Create(CultureInfo.InvariantCulture, $"a folder of 1 to {SeriesReader.MostFiles} files"),
                "Give the folder that holds the images themselves."));
    }
}
