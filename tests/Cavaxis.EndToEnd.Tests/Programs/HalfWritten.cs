using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>
/// Stops a command in the middle of writing a file: the neighbour that it writes first is a pipe that holds little, so that it stands still there and is killed.
/// </summary>
public static partial class HalfWritten
{
    /// <summary>What the pipe holds; a file must be larger, or the command could end before it is killed.</summary>
    private const int Held = 4096;

    /// <summary>F_SETPIPE_SZ of Linux.</summary>
    private const int SetPipeSize = 1031;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    /// <summary>Starts a command, waits until it has begun to write, and kills it.</summary>
    /// <param name="command">The command line after the program, in which $TARGET stands for the file.</param>
    /// <param name="target">The file that it is to replace.</param>
    /// <param name="environment">What else the command line names.</param>
    /// <returns>Its exit code and the first bytes that it wrote.</returns>
    public static async Task<(int ExitCode, byte[] Begun)> KillAsync(string command, string target, IReadOnlyDictionary<string, string>? environment = null)
    {
        string go = $"{target}.go";
        using Process process = CavaxisProcess.Start(
            "bash",
            ["-c", $"mkfifo \"$TARGET.$$.part\" && until [ -e \"$TARGET.go\" ]; do sleep 0.02; done; exec dotnet \"$CAVAXIS\" {command}"],
            new Dictionary<string, string>(environment ?? new Dictionary<string, string>()) { ["CAVAXIS"] = CavaxisProcess.Program, ["TARGET"] = target });
        Task<string> faults = process.StandardError.ReadToEndAsync();
        string neighbour = $"{target}.{process.Id}.part";
        Assert.True(SpinWait.SpinUntil(() => File.Exists(neighbour), Patience));

        // Open for both: a pipe opened for reading alone would wait for ever where the command never writes to it.
        using FileStream pipe = new(neighbour, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite, bufferSize: 0);
        if (Control(pipe.SafeFileHandle, SetPipeSize, Held) < Held)
        {
            throw new Win32Exception(Marshal.GetLastPInvokeError());
        }

        await File.WriteAllTextAsync(go, string.Empty);
        byte[] begun = new byte[9];
        Task read = pipe.ReadExactlyAsync(begun).AsTask();
        if (await Task.WhenAny(read, process.WaitForExitAsync(), Task.Delay(Patience)) != read && !read.IsCompleted)
        {
            process.Kill();
            throw new InvalidOperationException($"It wrote nothing: {command} {await faults}");
        }

        await read;
        Assert.False(process.HasExited);
        process.Kill();
        await process.WaitForExitAsync();
        File.Delete(go);
        return (process.ExitCode, begun);
    }

    [LibraryImport("libc", EntryPoint = "fcntl", SetLastError = true)]
    private static partial int Control(SafeFileHandle handle, int command, int argument);
}
