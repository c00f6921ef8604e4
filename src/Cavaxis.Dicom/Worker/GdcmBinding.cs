using System.Reflection;
using System.Runtime.InteropServices;

namespace Cavaxis.Dicom.Worker;

/// <summary>
/// GDCM's C# binding, loaded when the worker starts: the program builds and runs without it, and says what to install where it is
/// missing. Its types are reached by name, so nothing of it stands in the project files.
/// </summary>
internal sealed class GdcmBinding
{
    /// <summary>Where Debian puts the binding (package libgdcm-cil).</summary>
    public const string DebianFolder = "/usr/lib/cli";

    private readonly Assembly assembly;
    private readonly MethodInfo computeVr;
    private readonly MethodInfo pointer;

    private GdcmBinding(Assembly assembly)
    {
        this.assembly = assembly;
        computeVr = Named("DataSetHelper").GetMethod("ComputeVR")!;
        pointer = Named("SWIGTYPE_p_void").GetMethod("getCPtr", BindingFlags.NonPublic | BindingFlags.Static)!;
        foreach (string loud in (string[])["DebugOff", "WarningOff", "ErrorOff"])
        {
            _ = Named("Trace").GetMethod(loud)!.Invoke(null, null);
        }
    }

    /// <summary>Loads the binding from its folder, or from the newest of the folders in which Debian keeps it.</summary>
    /// <param name="folder">Folder of gdcm-sharp.dll; empty for Debian's.</param>
    /// <returns>Null where there is none.</returns>
    public static GdcmBinding? Load(string folder)
    {
        string? found = folder.Length > 0 ? folder : Directory.Exists(DebianFolder) ? Directory.GetDirectories(DebianFolder, "gdcm-sharp-*").Max(StringComparer.Ordinal) : null;
        string dll = Path.Combine(found ?? string.Empty, "gdcm-sharp.dll");
        string glue = Path.Combine(found ?? string.Empty, "libgdcmsharpglue.so");
        if (found is null || !File.Exists(dll) || !File.Exists(glue))
        {
            return null;
        }

        Assembly loaded = Assembly.LoadFrom(dll);
        NativeLibrary.SetDllImportResolver(loaded, (_, _, _) => NativeLibrary.Load(glue));
        return new GdcmBinding(loaded);
    }

    /// <summary>A new object of the binding.</summary>
    public dynamic New(string type, params object[] arguments) => Activator.CreateInstance(Named(type), arguments)!;

    /// <summary>A new counted object of a type that makes its own.</summary>
    public dynamic Make(string type) => Named(type).GetMethod("New", [])!.Invoke(null, null)!;

    /// <summary>The value representation of an element whose file names none, by the standard's dictionary.</summary>
    public string RepresentationOf(object file, object set, object tag) => ((dynamic)computeVr.Invoke(null, [file, set, tag])!).toString();

    /// <summary>A value of an enumeration nested in a type.</summary>
    public object Choice(string type, string method, string text) => Named(type).GetMethod(method, [typeof(string)])!.Invoke(null, [text])!;

    /// <summary>Copies bytes out of native memory.</summary>
    public void Copy(object native, long offset, byte[] target)
    {
        HandleRef handle = (HandleRef)pointer.Invoke(null, [native])!;
        Marshal.Copy((nint)(handle.Handle + offset), target, 0, target.Length);
        GC.KeepAlive(native);
    }

    private Type Named(string type) => assembly.GetType($"gdcm.{type}", throwOnError: true)!;
}
