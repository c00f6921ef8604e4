namespace Cavaxis.Bedside.Stores;

/// <summary>Where the record lies when nobody says otherwise: the same place for command line and workspace.</summary>
public static class RecordPlace
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "record.db";

    /// <summary>The person's data folder: <c>$XDG_DATA_HOME/cavaxis</c>, or <c>~/.local/share/cavaxis</c>.</summary>
    public static string DataFolder
    {
        get
        {
            string? set = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
            string home = !string.IsNullOrEmpty(set) && Path.IsPathRooted(set)
                ? set
                : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "share");
            return Path.Combine(home, "cavaxis");
        }
    }

    /// <summary>The file of the record in the data folder.</summary>
    public static string DefaultStore => Path.Combine(DataFolder, FileName);
}
