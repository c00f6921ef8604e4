namespace Cavaxis.Web.Tests;

/// <summary>A folder that is gone after the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("cavaxis-web-");

    /// <summary>Path of a file in it.</summary>
    public string this[string name] => Path.Combine(folder.FullName, name);

    public void Dispose() => folder.Delete(recursive: true);
}
