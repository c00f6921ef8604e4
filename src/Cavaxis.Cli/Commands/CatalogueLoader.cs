using System.Text;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.Commands;

/// <summary>The built-in catalogue with the user's own catalogues added.</summary>
internal static class CatalogueLoader
{
    /// <summary>Loads it.</summary>
    /// <param name="paths">Files of the user's catalogues.</param>
    /// <returns>The catalogue.</returns>
    /// <exception cref="InputFaultException">A file cannot be read or used.</exception>
    public static DeviceCatalogue Load(IEnumerable<string> paths)
    {
        DeviceCatalogue catalogue = DeviceCatalogue.BuiltIn;
        foreach (string path in paths)
        {
            catalogue = catalogue.With(CatalogueFile.Parse(Text(path, CatalogueFile.LongestText)));
        }

        return catalogue;
    }

    /// <summary>Reads a UTF-8 text file.</summary>
    /// <param name="path">Path.</param>
    /// <param name="most">Largest size in bytes.</param>
    /// <returns>The text.</returns>
    /// <exception cref="InputFaultException">It cannot be read, is too large or is not UTF-8.</exception>
    public static string Text(string path, int most)
    {
        byte[] bytes = InputFile.ReadAll(path, most);
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongEncoding, InputFault.Shown(path), "not UTF-8", "a text file in UTF-8", "Save the file as UTF-8."));
        }
    }
}
