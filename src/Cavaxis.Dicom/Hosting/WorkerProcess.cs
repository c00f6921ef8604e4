using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Cavaxis.Dicom.Wire;

namespace Cavaxis.Dicom.Hosting;

/// <summary>A running worker and its pipes.</summary>
internal sealed class WorkerProcess
{
    /// <summary>Longest answer that is taken: a frame and its layout, or all elements of a file.</summary>
    private const int LongestReply = 512 << 20;

    private readonly Process process;

    private WorkerProcess(Process process) => this.process = process;

    /// <summary>Number of its process.</summary>
    public int Id => process.Id;

    /// <summary>Starts one.</summary>
    /// <param name="limits">Memory that it may take.</param>
    /// <param name="bindingFolder">Folder of GDCM's binding; empty for Debian's.</param>
    public static WorkerProcess Start(ReadLimits limits, string bindingFolder)
    {
        string runtime = RuntimeEnvironment.GetRuntimeDirectory();
        string dotnet = Path.GetFullPath(Path.Combine(runtime, "..", "..", "..", OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet"));
        string program = typeof(WorkerProcess).Assembly.Location;
        ProcessStartInfo start = new() { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        if (OperatingSystem.IsWindows())
        {
            start.FileName = dotnet;
        }
        else
        {
            // The kernel itself holds native code to its memory, and no core of a patient's image is written.
            string kilobytes = (limits.AddressSpace / 1024).ToString(CultureInfo.InvariantCulture);
            start.FileName = "/bin/sh";
            start.ArgumentList.Add("-c");
            start.ArgumentList.Add($"ulimit -c 0; ulimit -v {kilobytes}; exec \"$@\"");
            start.ArgumentList.Add("sh");
            start.ArgumentList.Add(dotnet);
        }

        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(program);
        start.ArgumentList.Add(bindingFolder);
        start.Environment["DOTNET_GCHeapHardLimit"] = $"0x{limits.Heap.ToString("X", CultureInfo.InvariantCulture)}";
        start.Environment["DOTNET_gcServer"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        Process process = Process.Start(start) ?? throw new InvalidOperationException("The worker that reads images cannot be started.");

        // What it prints may repeat the file's content: it is read so that its pipe does not fill, and forgotten.
        process.ErrorDataReceived += static (_, _) => { };
        process.BeginErrorReadLine();
        return new WorkerProcess(process);
    }

    /// <summary>Asks and waits.</summary>
    /// <exception cref="IOException">It ended.</exception>
    /// <exception cref="InvalidDataException">It answered something else.</exception>
    public async Task<(bool IsDone, byte[] Bytes)> AskAsync(WorkerRequest request, string path, int number, CancellationToken cancel)
    {
        using MemoryStream asked = new();
        using (BinaryWriter writer = new(asked, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write((byte)request);
            writer.Write(path);
            writer.Write(number);
        }

        Stream input = process.StandardInput.BaseStream;
        await input.WriteAsync(asked.ToArray(), cancel).ConfigureAwait(false);
        await input.FlushAsync(cancel).ConfigureAwait(false);
        Stream output = process.StandardOutput.BaseStream;
        byte[] head = new byte[WorkerReply.Size];
        await output.ReadExactlyAsync(head, cancel).ConfigureAwait(false);
        WorkerReply reply = WorkerReply.Read(head) is { Length: <= LongestReply } read ? read : throw new InvalidDataException("The worker's answer has no head.");
        byte[] bytes = new byte[reply.Length];
        await output.ReadExactlyAsync(bytes, cancel).ConfigureAwait(false);
        return (reply.IsDone, bytes);
    }

    /// <summary>Ends it if it has not ended.</summary>
    /// <returns>How it ended, in words.</returns>
    public async Task<string> EndAsync()
    {
        using (process)
        using (process.StandardOutput)
        {
            // One that has just crashed is given the moment to say how.
            using CancellationTokenSource soon = new(TimeSpan.FromMilliseconds(500));
            try
            {
                process.StandardInput.Close();
                await process.WaitForExitAsync(soon.Token).ConfigureAwait(false);
            }
            catch (Exception late) when (late is OperationCanceledException or IOException)
            {
                process.Kill(entireProcessTree: true);
                await process.WaitForExitAsync(CancellationToken.None).ConfigureAwait(false);
                return "it was stopped";
            }

            return process.ExitCode > 128
                ? string.Create(CultureInfo.InvariantCulture, $"signal {process.ExitCode - 128}")
                : string.Create(CultureInfo.InvariantCulture, $"code {process.ExitCode}");
        }
    }
}
