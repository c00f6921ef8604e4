using System.Diagnostics;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>The workspace as a process of its own, on a free port, with a store in a folder of the test.</summary>
public sealed class WorkspaceServer : IDisposable
{
    private const string Announcement = "Workspace: ";

    private readonly string data;
    private readonly string[] options;
    private readonly IReadOnlyDictionary<string, string> environment;
    private Process process;

    private WorkspaceServer(string data, string[] options, IReadOnlyDictionary<string, string> environment, Process process, Uri address) =>
        (this.data, this.options, this.environment, this.process, Address) = (data, options, environment, process, address);

    /// <summary>The built program, of the same build configuration as these tests.</summary>
    public static string Program { get; } =
        Path.Combine(Path.GetDirectoryName(Path.GetDirectoryName(Path.GetDirectoryName(CavaxisProcess.Program)))!, "Cavaxis.Web", Path.GetFileName(Path.GetDirectoryName(CavaxisProcess.Program))!, "cavaxis-web.dll");

    /// <summary>Where it answers.</summary>
    public Uri Address { get; }

    /// <summary>Starts it and waits until it answers.</summary>
    /// <param name="data">Folder of its store.</param>
    /// <param name="options">Further options of the command line.</param>
    public static Task<WorkspaceServer> StartAsync(string data, params string[] options) => StartAsync(data, new Dictionary<string, string>(), options);

    /// <summary>Starts it with more environment and waits until it answers.</summary>
    /// <param name="data">Folder of its store.</param>
    /// <param name="environment">More environment.</param>
    /// <param name="options">Further options of the command line.</param>
    public static async Task<WorkspaceServer> StartAsync(string data, IReadOnlyDictionary<string, string> environment, params string[] options)
    {
        (Process process, Uri address) = await LaunchAsync(data, options, environment, port: 0);
        return new WorkspaceServer(data, options, environment, process, address);
    }

    /// <summary>Kills it as a power cut would.</summary>
    public void Kill()
    {
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
    }

    /// <summary>Starts it again at the same address.</summary>
    public async Task RestartAsync()
    {
        process.Dispose();
        (process, _) = await LaunchAsync(data, options, environment, Address.Port);
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            Kill();
        }

        process.Dispose();
    }

    private static async Task<(Process Process, Uri Address)> LaunchAsync(string data, string[] options, IReadOnlyDictionary<string, string> environment, int port)
    {
        Process process = CavaxisProcess.Start(
            "dotnet", [Program, "--no-open", "--data", data, "--port", port.ToString(System.Globalization.CultureInfo.InvariantCulture), .. options], environment);
        string? line = await process.StandardOutput.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(60));
        if (line?.StartsWith(Announcement, StringComparison.Ordinal) != true)
        {
            throw new InvalidOperationException($"The workspace did not start: {line} {await process.StandardError.ReadToEndAsync()}");
        }

        // What is printed later must not fill the pipe and stop the server.
        _ = process.StandardOutput.ReadToEndAsync();
        _ = process.StandardError.ReadToEndAsync();
        return (process, new Uri(line[Announcement.Length..] + "/"));
    }
}
