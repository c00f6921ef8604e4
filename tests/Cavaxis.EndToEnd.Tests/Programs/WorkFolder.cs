namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>A temporary folder that is gone after the test.</summary>
public sealed class WorkFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("cavaxis-");

    /// <summary>Path of the folder.</summary>
    public string Folder => folder.FullName;

    /// <summary>Path of a file in the folder.</summary>
    public string this[string name] => Path.Combine(folder.FullName, name);

    /// <summary>Writes a text file and gives its path.</summary>
    public string Write(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this[name];
    }

    public void Dispose() => folder.Delete(recursive: true);
}
