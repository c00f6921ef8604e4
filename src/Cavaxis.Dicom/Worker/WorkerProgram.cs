using System.Runtime.InteropServices;
using System.Text;
using Cavaxis.Dicom.Wire;

namespace Cavaxis.Dicom.Worker;

/// <summary>
/// The program beside the host: reads requests from its input until that ends, answers on its output. It holds one file at a time.
/// Whatever native code does to it, the host only sees it end.
/// </summary>
internal static class WorkerProgram
{
    /// <summary>Word by which the worker says that the binding is missing.</summary>
    public const string Missing = "missing";

    /// <summary>Variable of the environment that names the folder of the binding, where it does not lie where Debian puts it.</summary>
    private const string FolderVariable = "CAVAXIS_GDCM_FOLDER";

    private static int Main(string[] args)
    {
        using Stream input = Console.OpenStandardInput();
        using Stream output = OwnOutput();
        GdcmBinding? binding = GdcmBinding.Load(args.Length > 0 && args[0].Length > 0 ? args[0] : Environment.GetEnvironmentVariable(FolderVariable) ?? string.Empty);
        using BinaryReader reader = new(input, Encoding.UTF8);
        GdcmFile? file = null;
        try
        {
            while (true)
            {
                int request = input.ReadByte();
                if (request < 0)
                {
                    return 0;
                }

                string path = reader.ReadString();
                int number = reader.ReadInt32();
                try
                {
                    if (binding is null)
                    {
                        throw new WorkerFaultException(Missing);
                    }

                    // A new request for the elements reads the file anew: it may have changed.
                    if (file is null || file.Path != path || request == (int)WorkerRequest.Elements)
                    {
                        file?.Dispose();
                        file = null;
                        file = GdcmFile.Open(binding, path);
                    }

                    byte[][] done = (WorkerRequest)request switch
                    {
                        WorkerRequest.Elements => [file.Elements()],
                        WorkerRequest.Frame => file.Frame(number),
                        _ => [file.Fragment(number)],
                    };
                    Answer(output, true, done);
                }
                catch (WorkerFaultException fault)
                {
                    Answer(output, false, Encoding.UTF8.GetBytes(fault.Message));
                }
#pragma warning disable CA1031 // Whatever the binding throws is the file's fault, and the worker can go on with the next file.
                catch (Exception failure)
#pragma warning restore CA1031
                {
                    Answer(output, false, Encoding.UTF8.GetBytes($"GDCM gave up on it ({failure.GetType().Name})"));
                }
            }
        }
        finally
        {
            file?.Dispose();
        }
    }

    private static void Answer(Stream output, bool isDone, params byte[][] parts)
    {
        Span<byte> head = stackalloc byte[WorkerReply.Size];
        new WorkerReply(isDone, parts.Sum(static p => p.Length)).Write(head);
        output.Write(head);
        foreach (byte[] part in parts)
        {
            output.Write(part);
        }

        output.Flush();
    }

    /// <summary>The real output, kept for answers; what native libraries print goes to the error stream.</summary>
    private static Stream OwnOutput()
    {
        if (OperatingSystem.IsWindows())
        {
            return Console.OpenStandardOutput();
        }

        int own = Duplicate(1);
        _ = DuplicateTo(2, 1);
        return new FileStream(new Microsoft.Win32.SafeHandles.SafeFileHandle(own, ownsHandle: true), FileAccess.Write, 0);
    }

    [DllImport("libc", EntryPoint = "dup")]
    private static extern int Duplicate(int descriptor);

    [DllImport("libc", EntryPoint = "dup2")]
    private static extern int DuplicateTo(int from, int to);
}
