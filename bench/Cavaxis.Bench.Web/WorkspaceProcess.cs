using System.Diagnostics;

namespace Cavaxis.Bench.Web;

/// <summary>The built workspace as a process of its own, with an empty store that is gone afterwards.</summary>
internal sealed class WorkspaceProcess : IDisposable
{
    private readonly Process process;
    private readonly DirectoryInfo data;

    private WorkspaceProcess(Process process, DirectoryInfo data, Uri address) => (this.process, this.data, Address) = (process, data, address);

    /// <summary>Where it listens.</summary>
    public Uri Address { get; }

    /// <summary>Starts it on a free port.</summary>
    /// <param name="prepare">Puts something into the data folder first; null for an empty one.</param>
    /// <returns>The running workspace.</returns>
    public static WorkspaceProcess Start(Action<string>? prepare = null)
    {
        DirectoryInfo own = new(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        string program = Path.Combine(own.Parent!.Parent!.FullName, "Cavaxis.Web", own.Name, "cavaxis-web.dll");
        DirectoryInfo data = Directory.CreateTempSubdirectory("cavaxis-bench-");
        prepare?.Invoke(data.FullName);
        ProcessStartInfo start = new("dotnet", [program, "--no-open", "--data", data.FullName]) { RedirectStandardOutput = true };
        Process process = Process.Start(start)!;
        string line = process.StandardOutput.ReadLine() ?? throw new InvalidOperationException("The workspace did not start.");
        return new WorkspaceProcess(process, data, new Uri(line["Workspace: ".Length..]));
    }

    /// <summary>Ends it.</summary>
    public void Dispose()
    {
        process.Kill();
        process.WaitForExit();
        process.Dispose();
        data.Delete(recursive: true);
    }
}
