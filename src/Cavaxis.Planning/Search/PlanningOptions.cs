using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Search;

/// <summary>How planning is to be run.</summary>
public sealed record PlanningOptions
{
    /// <summary>Fewest anatomies that can be asked for.</summary>
    public const int FewestAnatomies = 200;

    /// <summary>Most anatomies that can be asked for.</summary>
    public const int MostAnatomies = 200_000;

    /// <summary>Most plans of one configuration that can be asked for.</summary>
    public const int MostPlansPerConfiguration = 100;

    /// <summary>Number of sampled anatomies.</summary>
    public int Anatomies { get; init; } = 10_000;

    /// <summary>Seed of the sampled anatomies. The same seed gives the same plans to the last digit.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Weights that replace those of the rule book.</summary>
    public IReadOnlyDictionary<CriterionName, double> Weights { get; init; } = new Dictionary<CriterionName, double>();

    /// <summary>Rank of the plan that the step list and the value of measurements speak of.</summary>
    public int ChosenRank { get; init; } = 1;

    /// <summary>How many device combinations of one configuration are shown at most.</summary>
    public int PlansPerConfiguration { get; init; } = 2;

    /// <summary>Whether each plan is put on the model of the circulation. Without it only the bounds of recirculation are told.</summary>
    public bool Circulation { get; init; }

    /// <summary>Configurations to plan; empty for all.</summary>
    public IReadOnlyList<ConfigurationKind> Configurations { get; init; } = [];

    /// <summary>Leaves out the value of the next measurements and the steps, for plans made against the clock.</summary>
    public bool Brief { get; init; }
}
