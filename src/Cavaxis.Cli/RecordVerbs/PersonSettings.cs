using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>What every verb takes that someone signed in must do.</summary>
public class PersonSettings : RecordSettings
{
    /// <summary>Name of the option of the password's file.</summary>
    public const string PasswordFileOption = "--password-file";

    /// <summary>Who acts.</summary>
    [CommandOption("--as <NAME>")]
    [Description("Who you are: the name you sign in with.")]
    public string? As { get; init; }

    /// <summary>File with the password.</summary>
    [CommandOption(PasswordFileOption + " <FILE>")]
    [Description("File of one line with your password, readable by you alone. Without it you are asked, or it is a line of standard input.")]
    public string? PasswordFile { get; init; }
}
