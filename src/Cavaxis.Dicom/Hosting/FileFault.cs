using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Hosting;

/// <summary>Faults of image files, in one wording.</summary>
internal static class FileFault
{
    /// <summary>What the person is told to install where GDCM is missing.</summary>
    public const string Install = "Install the Debian package libgdcm-cil: `apt-get install libgdcm-cil`. Everything else works without it.";

    private const string Accepted = "a DICOM file (PS3.10) of an image";

    /// <summary>The binding is not installed.</summary>
    public static InputFaultException Missing() =>
        new(new InputFault(FaultCode.NotFound, "gdcm-sharp.dll", "(nothing)", "GDCM with its C# binding, which reads DICOM files", Install));

    /// <summary>A file that cannot be read, and why.</summary>
    public static InputFaultException Unreadable(string path, string reason, string remedy = "Export the image once more from where it comes from.") =>
        new(new InputFault(FaultCode.UnreadableFile, Named(path), InputFault.Shown(reason), Accepted, remedy));

    /// <summary>A file that holds something else than it should.</summary>
    public static InputFaultException Malformed(string path, string reason, string accepted = Accepted, string remedy = "Export the image once more from where it comes from.") =>
        new(new InputFault(FaultCode.MalformedText, Named(path), reason, accepted, remedy));

    /// <summary>A file or a request that is larger than accepted.</summary>
    public static InputFaultException TooLarge(string path, string found, string accepted, string remedy) =>
        new(new InputFault(FaultCode.FileTooLarge, Named(path), found, accepted, remedy));

    /// <summary>The name of a file or folder as it is shown.</summary>
    public static string Named(string path) => InputFault.Shown(System.IO.Path.GetFileName(System.IO.Path.TrimEndingDirectorySeparator(path)));
}
