using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Plans;

/// <summary>A configuration for which no combination of devices could be planned.</summary>
/// <param name="Configuration">Which.</param>
/// <param name="Reason">Why, with the number that says so.</param>
public sealed record NotPlanned(ConfigurationKind Configuration, string Reason);
