using Cavaxis.EndToEnd.Tests.Images;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.EndToEnd.Tests.Workspace;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Cavaxis.EndToEnd.Tests.ImageVerbs;

/// <summary>A machine without the library that reads images: nothing but images is missing, and what to install is said. The library is made unfindable by the variable that names its folder.</summary>
[Collection(nameof(InTheBrowser))]
public class WithoutDecoderTests(WorkspaceBrowser browser)
{
    private const string Package = "libgdcm-cil";

    [Fact]
    public void The_command_line_names_the_package_and_plans_all_the_same()
    {
        using WorkFolder work = new();
        Dictionary<string, string> without = Without(work);
        string file = work["image.dcm"];
        File.WriteAllBytes(file, WrittenDicom.Ultrasound([40], 0.02, "ZZNOBODY^INVENTED"));
        Ended info = CavaxisProcess.Run(["image", "info", file], without);
        Assert.Equal(2, info.ExitCode);
        Assert.Contains(Package, info.Err, StringComparison.Ordinal);
        Assert.InRange(CavaxisProcess.Run(["plan", "demo/nearly-everything-unknown.json", "--anatomies", "500", "--quick"], without).ExitCode, 0, 1);
        Assert.Equal(0, CavaxisProcess.Run(["image", "info", file], new Dictionary<string, string>()).ExitCode);
    }

    [Fact]
    public async Task The_workspace_names_the_package_once_for_many_files_and_every_other_page_works()
    {
        using WorkFolder work = new();
        using WorkspaceServer server = await WorkspaceServer.StartAsync(work["data"], Without(work));
        IPage page = await browser.OpenElsewhereAsync(server.Address);
        await page.Locator(".patient-open").First.ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("What do we know?");
        await page.GotoAsync(new Uri(server.Address, new Uri(page.Url).AbsolutePath.TrimStart('/').Replace("/know", "/images", StringComparison.Ordinal)).ToString());
        await WorkspaceBrowser.AliveAsync(page);
        List<string> files = [];
        for (int i = 0; i < 3; i++)
        {
            files.Add(work[$"image-{i}.dcm"]);
            await File.WriteAllBytesAsync(files[^1], WrittenDicom.Ultrasound([40 + i], 0.02, "ZZNOBODY^INVENTED"));
        }

        await Chosen.FilesAsync(page, "#images-in", "#images-take", files);
        await page.ClickAsync("#images-take");
        await Expect(page.Locator(".trouble")).ToContainTextAsync(Package, new() { Timeout = 60_000 });
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(1);
        await page.GotoAsync(new Uri(server.Address, "exercises?seed=3").ToString());
        await page.Locator(".pointing-stage[data-mounted]").WaitForAsync(new() { Timeout = 60_000 });
        await page.Context.CloseAsync();
    }

    [Fact]
    public void The_script_that_prepares_the_machine_goes_on_where_the_package_cannot_be_had()
    {
        using WorkFolder work = new();
        Dictionary<string, string> without = Without(work);
        string bin = Directory.CreateDirectory(work["bin"]).FullName;
        string refusing = Path.Combine(bin, "apt-get");
        File.WriteAllText(refusing, "#!/bin/sh\necho \"E: Unable to locate package\" >&2\nexit 100\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(refusing, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        without["PATH"] = $"{bin}:{Environment.GetEnvironmentVariable("PATH")}";
        Ended ended = CavaxisProcess.Shell("scripts/prepare", without);
        Assert.Equal(0, ended.ExitCode);
        Assert.Contains(Package, ended.Err, StringComparison.Ordinal);
        Assert.Contains("everything else works", ended.Err, StringComparison.Ordinal);
    }

    private static Dictionary<string, string> Without(WorkFolder work) => new() { ["CAVAXIS_GDCM_FOLDER"] = Directory.CreateDirectory(work["no-decoder"]).FullName };
}
