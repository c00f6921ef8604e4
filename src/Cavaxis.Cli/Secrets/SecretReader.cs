using System.Text;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.Secrets;

/// <summary>
/// Reads passwords and passphrases: from a file of one line, from a prompt that shows nothing, or from standard input, a line each in the order in
/// which they are asked for. Never from an argument (other people of the machine see those) and never from the environment (every
/// program started from here inherits it, and it ends up in crash reports): a variable of that name is refused, so that nobody relies on it.
/// No fault repeats what was read.
/// </summary>
/// <param name="lines">Standard input.</param>
/// <param name="terminal">The terminal; null where standard input is none.</param>
public sealed class SecretReader(TextReader lines, ISecretTerminal? terminal)
{
    /// <summary>Variables that are not read, and refused where they are set.</summary>
    public static IReadOnlyList<string> RefusedVariables { get; } = ["CAVAXIS_PASSWORD", "CAVAXIS_PASSPHRASE"];

    private const int LongestFile = 4096;

    /// <summary>The reader of this process.</summary>
    public static SecretReader OfProcess => new(Console.In, Console.IsInputRedirected ? null : new ConsoleTerminal());

    /// <summary>Reads a secret that exists.</summary>
    /// <param name="path">File that holds it; null for prompt or standard input.</param>
    /// <param name="question">What is asked for, such as "Password of anna".</param>
    /// <param name="option">Option that names the file.</param>
    /// <returns>The secret, not empty.</returns>
    /// <exception cref="InputFaultException">There is none, or it cannot be read.</exception>
    public string Existing(string? path, string question, string option)
    {
        RefuseVariables();
        string? secret = path is not null ? OfFile(path, option) : terminal is not null ? terminal.Ask(question) : Line();
        return string.IsNullOrEmpty(secret) ? throw Missing(option) : secret;
    }

    /// <summary>Reads a secret that is new: a person types it twice.</summary>
    /// <param name="path">File that holds it; null for prompt or standard input.</param>
    /// <param name="question">What is asked for.</param>
    /// <param name="option">Option that names the file.</param>
    /// <returns>The secret, not empty.</returns>
    /// <exception cref="InputFaultException">There is none, it cannot be read, or the two differ.</exception>
    public string New(string? path, string question, string option)
    {
        string secret = Existing(path, question, option);
        return path is not null || terminal is null || terminal.Ask($"{question}, once more") == secret
            ? secret
            : throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, option, "typed differently the second time", "the same twice", "Try again; nothing was changed."));
    }

    private static void RefuseVariables()
    {
        foreach (string name in RefusedVariables.Where(static n => Environment.GetEnvironmentVariable(n) is not null))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, name, "a variable that is set", "no secret in the environment", "Unset it. Give the secret at the prompt, in a file, or as a line of standard input."));
        }
    }

    private static string OfFile(string path, string option)
    {
        try
        {
            if (!OperatingSystem.IsWindows() && File.Exists(path) && !IsMine(File.GetUnixFileMode(path)))
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.UnreadableFile, option, "a file that others may read", "a file for its owner alone (mode 600)", "Take the rights of others away: chmod 600."));
            }

            using FileStream stream = File.OpenRead(path);
            byte[] bytes = new byte[LongestFile + 1];
            int read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes, 0, read).TrimStart('\uFEFF').TrimEnd('\r', '\n');
            return read <= LongestFile && !text.AsSpan().ContainsAny('\r', '\n') ? text : throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, option, "more than one line", "one line of at most 4096 bytes", "Put the secret alone in the file."));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, option, e is DecoderFallbackException ? "not UTF-8" : InputFault.Shown(path), "a readable text file of one line", "Check path, rights and encoding."));
        }
    }

    private static bool IsMine(UnixFileMode mode) => (mode & (UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite)) == 0;

    private static InputFaultException Missing(string option) => new(new InputFault(
        FaultCode.MissingField, option, "(nothing)", "the secret at the prompt, in a file of one line, or as a line of standard input", $"Use {option} FILE, or type it when asked."));

    private string? Line()
    {
        try
        {
            return lines.ReadLine();
        }
        catch (IOException)
        {
            return null;
        }
    }
}
