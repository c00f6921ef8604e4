using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>What is to be borne in mind in a situation.</summary>
/// <param name="Situation">Which.</param>
/// <param name="Id">Name of the finding.</param>
/// <param name="Says">What is so.</param>
/// <param name="Resolve">What answers it.</param>
/// <param name="Source">Source and how far it was opened.</param>
public sealed record RapidFinding(RapidSituation Situation, string Id, string Says, string Resolve, Source Source);
