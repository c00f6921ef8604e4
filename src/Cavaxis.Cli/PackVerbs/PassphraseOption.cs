using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.PackVerbs;

/// <summary>The option that names the file of a pack's passphrase.</summary>
internal static class PassphraseOption
{
    /// <summary>Its name.</summary>
    public const string Name = "--passphrase-file";

    /// <summary>Its words.</summary>
    public const string Words = "File of one line with the passphrase of the pack, readable by you alone; without it you are asked.";

    /// <summary>The passphrase of a file that exists.</summary>
    /// <param name="secrets">Gives it.</param>
    /// <param name="path">The option.</param>
    /// <returns>The passphrase.</returns>
    public static string Existing(SecretReader secrets, string? path) => secrets.Existing(path, "Passphrase of the pack", Name);

    /// <summary>The passphrase of a new file.</summary>
    /// <param name="secrets">Gives it.</param>
    /// <param name="path">The option.</param>
    /// <returns>The passphrase.</returns>
    public static string New(SecretReader secrets, string? path) => secrets.New(path, "New passphrase of the pack", Name);
}
