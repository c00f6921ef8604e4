namespace Cavaxis.Records.Tests;

/// <summary>A folder for one test, removed with it.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public TemporaryFolder() => Directory.CreateDirectory(Path);

    public string Path { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "cvx-records-" + Guid.NewGuid().ToString("N"));

    /// <summary>Path of a file in it.</summary>
    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose()
    {
        if (Directory.Exists(Path))
        {
            Directory.Delete(Path, true);
        }
    }
}
