using System.Diagnostics;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Reports;

public class ReportWritingTests
{
    private const string Before = "the report of yesterday";

    // None of these can be written to even by an administrator.
    [Theory]
    [InlineData("/proc/plan.html")]
    [InlineData("no-such-folder/plan.html")]
    [InlineData("a-file/plan.pdf")]
    [InlineData("a-folder.html")]
    public void A_place_that_cannot_be_written_to_is_refused_by_name(string target)
    {
        using WorkFolder work = new();
        work.Write("a-file", Before);
        Directory.CreateDirectory(work["a-folder.html"]);
        string path = target[0] == '/' ? target : work[target];
        var fault = Faults.Only(CavaxisProcess.Run("plan", DemoCase.Small, "--anatomies", "200", "--json", "--report", path));
        Assert.Equal("unreadableFile", fault.Code);
        Assert.StartsWith(path[..Math.Min(60, path.Length)], fault.Field, StringComparison.Ordinal);
        Assert.Equal(["a-file", "a-folder.html"], Directory.GetFileSystemEntries(work.Folder).Select(Path.GetFileName).Order());
        Assert.Equal(Before, File.ReadAllText(work["a-file"]));
    }

    // A limit on the size of written files stands for the full disk: writing breaks off in the middle.
    [Theory]
    [InlineData("plan.html")]
    [InlineData("plan.pdf")]
    public void A_disk_that_fills_up_leaves_the_report_of_before(string name)
    {
        using WorkFolder work = new();
        work.Write(name, Before);
        Ended ended = CavaxisProcess.Shell(
            "trap '' XFSZ; ulimit -f 8; exec dotnet \"$CAVAXIS\" plan \"$CASE\" --anatomies 200 --json --report \"$TARGET\"",
            new Dictionary<string, string> { ["CASE"] = DemoCase.Small, ["TARGET"] = work[name], ["DOTNET_EnableWriteXorExecute"] = "0" });
        var fault = Faults.Only(ended);
        Assert.Equal("unreadableFile", fault.Code);
        Assert.Equal(Before, File.ReadAllText(work[name]));
        Assert.Equal([name], Directory.GetFiles(work.Folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("plan.html")]
    [InlineData("plan.pdf")]
    public void A_report_of_before_is_replaced_by_a_whole_one(string name)
    {
        using WorkFolder work = new();
        work.Write(name, Before);
        Assert.Equal(0, CavaxisProcess.Run("plan", DemoCase.Small, "--anatomies", "200", "--report", work[name]).ExitCode);
        Assert.DoesNotContain(Before, File.ReadAllText(work[name]), StringComparison.Ordinal);
        Assert.Equal([name], Directory.GetFiles(work.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Killed_in_the_middle_of_writing_it_leaves_the_report_of_before()
    {
        using WorkFolder work = new();
        string target = work.Write("plan.html", Before);
        (int code, byte[] begun) = await HalfWritten.KillAsync("plan \"$CASE\" --anatomies 200 --report \"$TARGET\"", target, new Dictionary<string, string> { ["CASE"] = DemoCase.Small });
        Assert.Equal("<!DOCTYPE"u8.ToArray(), begun);
        Assert.Equal(137, code);
        Assert.Equal(Before, File.ReadAllText(target));
    }

    [Theory]
    [InlineData("plan.html")]
    [InlineData("plan.pdf")]
    public void Killed_at_any_time_it_leaves_the_report_of_before_or_a_whole_one(string name)
    {
        using WorkFolder work = new();
        string[] Args(string target) => [CavaxisProcess.Program, "plan", DemoCase.Small, "--anatomies", "200", "--report", target];
        Stopwatch watch = Stopwatch.StartNew();
        using (Process whole = CavaxisProcess.Start("dotnet", Args(work[name]), new Dictionary<string, string>()))
        {
            whole.StandardOutput.ReadToEnd();
            whole.WaitForExit();
        }

        TimeSpan full = watch.Elapsed;
        byte[] wanted = File.ReadAllBytes(work[name]);
        for (int i = 0; i < 4; i++)
        {
            string target = work.Write($"{i}-{name}", Before);
            using Process process = CavaxisProcess.Start("dotnet", Args(target), new Dictionary<string, string>());
            process.WaitForExit(full * (0.55 + (0.15 * i)));
            process.Kill();
            process.WaitForExit();
            byte[] found = File.ReadAllBytes(target);
            Assert.True(found.AsSpan().SequenceEqual(wanted) || found.AsSpan().SequenceEqual("the report of yesterday"u8), target);
        }
    }
}
