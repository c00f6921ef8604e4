using System.Diagnostics;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>Stops a command in the middle of writing a file: the neighbour that it writes first is a pipe, so that it stands still there and is killed.</summary>
public static class HalfWritten
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    /// <summary>Starts a command, waits until it has begun to write, and kills it.</summary>
    /// <param name="command">The command line after the program, in which $TARGET stands for the file.</param>
    /// <param name="target">The file that it is to replace.</param>
    /// <param name="environment">What else the command line names.</param>
    /// <returns>Its exit code and the first bytes that it wrote.</returns>
    public static async Task<(int ExitCode, byte[] Begun)> KillAsync(string command, string target, IReadOnlyDictionary<string, string>? environment = null)
    {
        using Process process = CavaxisProcess.Start(
            "bash",
            ["-c", $"mkfifo \"$TARGET.$$.part\" && exec dotnet \"$CAVAXIS\" {command}"],
            new Dictionary<string, string>(environment ?? new Dictionary<string, string>()) { ["CAVAXIS"] = CavaxisProcess.Program, ["TARGET"] = target });
        Task<string> faults = process.StandardError.ReadToEndAsync();
        string neighbour = $"{target}.{process.Id}.part";
        Assert.True(SpinWait.SpinUntil(() => File.Exists(neighbour), Patience));

        // Open for both: a pipe opened for reading alone would wait for ever where the command never writes to it.
        using FileStream pipe = new(neighbour, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite, bufferSize: 0);
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
        return (process.ExitCode, begun);
    }
}
