using Cavaxis.Quantities.Faults;
using PdfSharp.Fonts;

namespace Cavaxis.Reports.Pdf;

/// <summary>
/// Finds the fonts of PDF and PNG in the machine's usual font folders. One free family with wide coverage, so that a report
/// looks the same on every machine.
/// </summary>
internal sealed class DejaVuFonts : IFontResolver
{
    /// <summary>Family name under which the fonts are asked for.</summary>
    internal const string Family = "DejaVu Sans";

    private const string RegularFile = "DejaVuSans.ttf";
    private const string BoldFile = "DejaVuSans-Bold.ttf";

    private static readonly Lock Gate = new();

    private static readonly string[] UsualFolders =
    [
        "/usr/share/fonts/truetype/dejavu",
        "/usr/share/fonts/dejavu",
        "/usr/share/fonts/dejavu-sans-fonts",
        "/usr/share/fonts/TTF",
        "/usr/local/share/fonts",
        "/Library/Fonts",
        "C:\\Windows\\Fonts",
    ];

    private readonly Dictionary<string, byte[]> faces;

    private DejaVuFonts(Dictionary<string, byte[]> faces) => this.faces = faces;

    /// <summary>Sets the fonts for this process, once.</summary>
    /// <exception cref="InputFaultException">The fonts are not on this machine; the fault names the package that holds them.</exception>
    internal static void Install()
    {
        lock (Gate)
        {
            GlobalFontSettings.FontResolver ??= In(UsualFolders);
        }
    }

    /// <summary>The fonts from the machine's usual font folders.</summary>
    /// <returns>The fonts.</returns>
    /// <exception cref="InputFaultException">The fonts are not on this machine; the fault names the package that holds them.</exception>
    internal static DejaVuFonts Installed() => In(UsualFolders);

    /// <summary>The file of a face.</summary>
    /// <param name="isBold">Bold face.</param>
    /// <returns>Its bytes.</returns>
    internal byte[] Face(bool isBold) => faces[isBold ? BoldFile : RegularFile];

    /// <summary>The fonts from the first folder that holds both faces.</summary>
    /// <param name="folders">Folders in order of preference.</param>
    /// <returns>The fonts.</returns>
    /// <exception cref="InputFaultException">No folder holds both faces.</exception>
    internal static DejaVuFonts In(IReadOnlyList<string> folders)
    {
        foreach (string folder in folders)
        {
            string regular = Path.Combine(folder, RegularFile);
            string bold = Path.Combine(folder, BoldFile);
            if (File.Exists(regular) && File.Exists(bold))
            {
                return new DejaVuFonts(new Dictionary<string, byte[]>(StringComparer.Ordinal)
                {
                    [RegularFile] = File.ReadAllBytes(regular),
                    [BoldFile] = File.ReadAllBytes(bold),
                });
            }
        }

        throw new InputFaultException(new InputFault(
            FaultCode.NotFound,
            "fonts",
            "(nothing)",
            $"{RegularFile} and {BoldFile} in one of {string.Join(", ", folders)}",
            "Install the fonts (Debian and Ubuntu: apt-get install fonts-dejavu-core) and write the file again; HTML and SVG need no fonts."));
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => faces.GetValueOrDefault(faceName);

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(isBold ? BoldFile : RegularFile);
}
