using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Bedside.Stores;
using Cavaxis.Cli.Output;
using Cavaxis.Records.Engines;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>Where the images lie that a record names.</summary>
internal static class ImagesOption
{
    /// <summary>What is said of the option.</summary>
    public const string Words = "Folder of the images. Left out, the folder 'images' beside the record's file; of a record on a server, that of the workspace's own folder.";

    private const string Name = "images";

    /// <summary>The folder beside a record.</summary>
    /// <param name="given">As it was given; null where it was not.</param>
    /// <param name="store">The record.</param>
    /// <returns>The folder; it need not be there.</returns>
    public static ImageFolder Of(string? given, StoreAddress store)
    {
        string beside = store.Engine == StoreEngineKind.Sqlite ? store.Shown : RecordPlace.DefaultStore;
        return new ImageFolder(given ?? Path.Combine(Path.GetDirectoryName(Path.GetFullPath(beside))!, Name));
    }

    /// <summary>The folder beside a backup.</summary>
    /// <param name="backup">Path of the backup.</param>
    /// <returns>Its path.</returns>
    public static string OfBackup(string backup) => $"{Path.GetFullPath(backup)}.{Name}";

    /// <summary>Refuses a backup beside which images of another lie.</summary>
    /// <param name="backup">Path of the backup.</param>
    /// <exception cref="CommandFaultException">Something is there.</exception>
    public static void RequireFree(string backup)
    {
        if (Directory.Exists(OfBackup(backup)))
        {
            throw new CommandFaultException(new CommandFault("alreadyThere", "FILE", Quantities.Faults.InputFault.Shown(OfBackup(backup)), "a path beside which no images lie", "Choose another path: nothing is written over."));
        }
    }
}
