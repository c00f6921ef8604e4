using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.EndToEnd.Tests.Breakage;

public class BrokenCaseTests
{
    private const long MemoryBound = 300_000_000;

    [Fact]
    public void Every_broken_case_file_is_refused_by_the_whole_command_line()
    {
        using WorkFolder work = new();
        string path = work["case.json"];
        List<string> wrong = [];
        int count = 0;
        foreach ((string name, byte[] bytes) in MutatedCases.All(RepositoryFolder.DemoFiles))
        {
            File.WriteAllBytes(path, bytes);
            count++;
            (ExitCode code, string json, string err) = InProcess.Run("plan", path, "--json");
            if (code != ExitCode.InputError || err.Length > 0)
            {
                wrong.Add($"{name}: {code} {err}");
                continue;
            }

            Assert.NotEmpty(Faults.Of(json));
        }

        Assert.True(count >= 200, $"only {count} broken files");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Take(40)));
    }

    [Fact]
    public void A_sample_of_them_is_refused_by_the_real_program_in_bounded_memory()
    {
        using WorkFolder work = new();
        string path = work["case.json"];
        (string Name, byte[] Bytes)[] all = [.. MutatedCases.All(RepositoryFolder.DemoFiles)];
        IEnumerable<(string, byte[])> sample = Enumerable.Range(0, 8).Select(i => all[i * all.Length / 8])
            .Concat(all.Where(static m => m.Bytes.Length > 3_000_000).TakeLast(5));
        foreach ((string name, byte[] bytes) in sample)
        {
            File.WriteAllBytes(path, bytes);
            Ended ended = CavaxisProcess.Run("plan", path);
            Assert.True(ended.ExitCode == 2 && ended.Out.Length == 0, name);
            Assert.StartsWith("The input cannot be used", ended.Err, StringComparison.Ordinal);
            Assert.Contains("accepted: ", ended.Err, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", ended.Err, StringComparison.Ordinal);
            Assert.True(ended.PeakBytes < MemoryBound, $"{name}: {ended.PeakBytes} bytes");
        }
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("plan", "--rules")]
    [InlineData("plan", "--catalogue")]
    [InlineData("cannula import")]
    public void A_file_of_100_MB_is_refused_in_bounded_memory(string verb, string? option = null)
    {
        using WorkFolder work = new();
        string path = work["big.json"];
        using (StreamWriter big = new(path))
        {
            string block = new('a', 1_000_000);
            big.Write("{\"cavaxisCase\":1,\"notes\":\"");
            for (int i = 0; i < 100; i++)
            {
                big.Write(block);
            }

            big.Write("\"}");
        }

        string[] args = option is null ? [.. verb.Split(' '), path] : [verb, DemoCase.Small, option, path];
        Ended ended = CavaxisProcess.Run([.. args, "--json"]);
        Assert.Equal("fileTooLarge", Faults.Only(ended).Code);
        Assert.InRange(ended.PeakBytes, 1, MemoryBound);
    }

    [Theory]
    [InlineData("missing.json")]
    [InlineData(".")]
    [InlineData("")]
    [InlineData("no\nsuch\u001b[31mfile")]
    public void What_is_no_file_is_refused_by_name_and_disturbs_no_terminal(string name)
    {
        using WorkFolder work = new();
        string path = name.Length == 0 ? name : Path.Combine(work.Folder, name);
        Ended ended = CavaxisProcess.Run("plan", path);
        Assert.Equal((2, string.Empty), (ended.ExitCode, ended.Out));
        Assert.Contains("not", ended.Err, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', ended.Complaints);
        Assert.Equal("unreadableFile", Assert.Single(Faults.Of(InProcess.Run("plan", path, "--json").Out)).Code);
    }

    [Fact]
    public void Devices_without_an_end_are_refused_in_bounded_memory()
    {
        Ended ended = CavaxisProcess.Run("plan", "/dev/zero", "--json");
        Assert.Equal((2, string.Empty), (ended.ExitCode, ended.Complaints));
        Assert.NotEmpty(Faults.Of(ended.Out));
        Assert.InRange(ended.PeakBytes, 1, MemoryBound);
    }
}
