using System.Text;
using Cavaxis.Cli;
using Cavaxis.Cli.Output;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Breakage;

public class FailureTests
{
    [Fact]
    public void A_failure_of_the_program_ends_with_code_3_in_words_without_a_stack_trace()
    {
        using StringWriter faults = new();
        using BreakingWriter results = new(new InvalidOperationException("the inner works\u001b[31m broke"));
        ExitCode code = new CavaxisApplication(new CommandOutput(results, faults, colours: false)).Run(["plan", DemoCase.Small, "--anatomies", "200", "--quick"]);
        Assert.Equal(ExitCode.InternalError, code);
        string said = faults.ToString();
        Assert.StartsWith("The program failed (InvalidOperationException: the inner works", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', said);
        Assert.Single(said.Trim().Split('\n'));
    }

    [Theory]
    [InlineData("plan", "missing.json")]
    [InlineData("plan", "missing.json", "--json")]
    [InlineData("nonsense")]
    public void With_every_stream_broken_the_exit_code_still_tells(params string[] args)
    {
        using BreakingWriter broken = new(new IOException("no space"));
        Assert.Equal(ExitCode.InputError, new CavaxisApplication(new CommandOutput(broken, broken, colours: false)).Run(args));
    }

    [Theory]
    [InlineData("plan missing.json 2>/dev/full", 2)]
    [InlineData("plan missing.json --json >/dev/full", 2)]
    [InlineData("plan demo/child-lung-failure.json --anatomies 200 >/dev/full", 3)]
    [InlineData("plan demo/child-lung-failure.json --anatomies 200 --json >/dev/full 2>&1", 3)]
    [InlineData("plan missing.json >&- 2>&-", 2)]
    public void A_full_or_closed_stream_gives_an_exit_code_and_no_crash(string command, int code)
    {
        Ended ended = CavaxisProcess.Shell($"exec dotnet \"$CAVAXIS\" {command}", new Dictionary<string, string>());
        Assert.Equal(code, ended.ExitCode);
        Assert.DoesNotContain("   at ", ended.Err + ended.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Unhandled", ended.Err, StringComparison.Ordinal);
    }

    // So many anatomies take more than the second after which progress is told, to a stream that is full.
    [Fact]
    public void Progress_that_nobody_can_read_does_not_end_the_plan()
    {
        Ended ended = CavaxisProcess.Shell(
            "DOTNET_PROCESSOR_COUNT=1 exec dotnet \"$CAVAXIS\" plan \"$CASE\" --anatomies 100000 --json 2>/dev/full",
            new Dictionary<string, string> { ["CASE"] = DemoCase.PathOf("tall-man-severe-lung-failure.json") });
        Assert.Equal(0, ended.ExitCode);
        Assert.NotEmpty(Plans.PlanJson.Of(ended).Plans);
    }

    [Fact]
    public void A_reader_that_goes_away_is_no_failure()
    {
        Ended ended = CavaxisProcess.Shell(
            "dotnet \"$CAVAXIS\" plan \"$CASE\" --anatomies 200 | head -n 1; exit ${PIPESTATUS[0]}", new Dictionary<string, string> { ["CASE"] = DemoCase.Small });
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        Assert.Equal("Child with lung failure  [INVENTED CASE]\n", ended.Out);
    }

    private sealed class BreakingWriter(Exception failure) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw failure;
    }
}
