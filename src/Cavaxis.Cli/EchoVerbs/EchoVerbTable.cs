using Spectre.Console.Cli;

namespace Cavaxis.Cli.EchoVerbs;

/// <summary>The verbs of synthetic ultrasound.</summary>
internal static class EchoVerbTable
{
    /// <summary>Name of the branch of exercises.</summary>
    public const string Branch = "exercise";

    /// <summary>Adds them.</summary>
    /// <param name="configuration">The command line.</param>
    public static void AddTo(IConfigurator configuration)
    {
        configuration.AddCommand<EchoCommand>("echo")
            .WithDescription("Make a synthetic ultrasound picture or loop of wire, introducer and cannula.")
            .WithExample("echo", "demo/scenes/cannula-in-vessel.json", "--out", "picture.png")
            .WithExample("echo", "demo/scenes/advancing-wire.json", "--out", "loop.gif", "--frames", "30");
        configuration.AddBranch(Branch, branch =>
        {
            branch.SetDescription("Find the tip in a synthetic picture, with score and explanation.");
            branch.AddCommand<ExerciseNewCommand>("new").WithDescription("Write picture and question into a folder.")
                .WithExample("exercise", "new", "--seed", "3", "--out", "tip-3");
            branch.AddCommand<ExerciseAnswerCommand>("answer").WithDescription("Judge an answer to the exercise of a folder and explain it.")
                .WithExample("exercise", "answer", "tip-3", "--at", "320,240");
        });
    }
}
