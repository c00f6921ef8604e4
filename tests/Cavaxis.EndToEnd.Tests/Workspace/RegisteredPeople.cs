using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;
using Microsoft.Playwright;

namespace Cavaxis.EndToEnd.Tests.Workspace;

/// <summary>Invented people of a record that a workspace is to be started on: Ada keeps people, Lena leads.</summary>
internal static class RegisteredPeople
{
    public const string Password = "plum lantern river seven";

    /// <summary>Registers them by the command line.</summary>
    public static void Register(WorkFolder folder, string data)
    {
        Directory.CreateDirectory(data);
        string password = folder["password"];
        File.WriteAllText(password, Password);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(password, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        string store = Path.Combine(data, "record.db");
        Assert.Equal((int)ExitCode.Done, CavaxisProcess.Run("record", "create", "--store", store, "--as", "ada", "--name", "Ada (invented)", "--programme", "own", "--password-file", password).ExitCode);
        Assert.Equal((int)ExitCode.Done, CavaxisProcess.Run(
            "people", "add", "lena", "--name", "Lena (invented)", "--role", "lead", "--programme", "own", "--new-password-file", password, "--store", store, "--as", "ada", "--password-file", password).ExitCode);
    }

    /// <summary>Signs in on the page that asks for it.</summary>
    public static async Task SignInAsync(IPage page, string name, string password = Password)
    {
        await page.FillAsync("#name", name);
        await page.FillAsync("#password", password);
        await page.ClickAsync("button:has-text('Sign in')");
    }
}
