using Spectre.Console.Cli;

namespace Cavaxis.Cli.RapidVerbs;

/// <summary>The verb of decisions within minutes.</summary>
internal static class RapidVerbTable
{
    /// <summary>Adds it.</summary>
    /// <param name="configuration">The command line.</param>
    public static void AddTo(IConfigurator configuration) => configuration.AddCommand<RapidCommand>("rapid")
        .WithDescription("The shortest plan with what is known, published criteria and cohorts beside it, and everything unknown. No verdict.")
        .WithExample("rapid", "--age", "54", "--sex", "male", "--weight", "85")
        .WithExample("rapid", "--age", "54", "--sex", "male", "--weight", "85", "--no-flow", "2", "--low-flow", "35", "--to-flow", "20", "--answer", "witnessed=yes", "--answer", "firstRhythm=shockable");
}
