using Spectre.Console.Cli;

namespace Cavaxis.Cli.PackVerbs;

/// <summary>The verbs of second-opinion packs.</summary>
internal static class PackVerbTable
{
    /// <summary>Adds them to the command line.</summary>
    /// <param name="configuration">The command line.</param>
    public static void AddTo(IConfigurator configuration) => configuration.AddBranch("pack", static branch =>
    {
        branch.SetDescription("Second opinion: a de-identified, sealed pack out, an answer in.");
        branch.AddCommand<PackMakeCommand>("make").WithDescription("Make a pack of a patient's course; without --out show what would go along.");
        branch.AddCommand<PackOpenCommand>("open").WithDescription("Read a pack; needs no account.");
        branch.AddCommand<PackAnswerCommand>("answer").WithDescription("Answer a pack; needs no account.");
        branch.AddCommand<PackAcceptCommand>("accept").WithDescription("Take an answer into the record.");
    });
}
