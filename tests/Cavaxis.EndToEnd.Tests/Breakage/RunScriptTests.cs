using Cavaxis.EndToEnd.Tests.Plans;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Breakage;

[Collection(nameof(BuildsTheProgram))]
public class RunScriptTests
{
    // The script builds the release form when a source is newer than it; the answer must be that of the program itself.
    [Fact]
    public void The_run_script_builds_what_is_stale_and_gives_only_the_answer_on_the_standard_output()
    {
        Ended ended = CavaxisProcess.Shell("./run plan demo/nearly-everything-unknown.json --json --anatomies 1000 --quick", new Dictionary<string, string>());
        Assert.InRange(ended.ExitCode, 0, 1);
        Assert.NotEmpty(PlanJson.Of(ended).Plans);
        Assert.Equal(DemoCase.Plan("nearly-everything-unknown.json", "--json").OutBytes, ended.OutBytes);
    }
}
