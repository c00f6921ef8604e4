using Cavaxis.Cli;
using Cavaxis.Cli.Output;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>Runs the command line inside the test, for many runs in a row or with writers that fail.</summary>
public static class InProcess
{
    /// <summary>Runs a command with captured output.</summary>
    public static (ExitCode Code, string Out, string Err) Run(params string[] args)
    {
        using StringWriter results = new();
        using StringWriter faults = new();
        ExitCode code = new CavaxisApplication(new CommandOutput(results, faults, colours: false)).Run(QuickPlan.Of(args));
        return (code, results.ToString(), faults.ToString());
    }
}
