using Cavaxis.Quantities;

namespace Cavaxis.Course.Outcomes;

/// <summary>How often an outcome happened among those of whom it is known.</summary>
/// <param name="Definition">Which outcome.</param>
/// <param name="Events">How many had it.</param>
/// <param name="Known">Of how many it is known.</param>
/// <param name="Unknown">Of how many who could have had it nobody recorded it.</param>
/// <param name="Share">Share with its 90 % interval; null when it is known of nobody.</param>
/// <param name="Low95">Lower end of the 95 % interval.</param>
/// <param name="High95">Upper end of the 95 % interval.</param>
/// <param name="IsSmall">True when the counts are too few to compare by.</param>
/// <param name="Words">One sentence with the counts, and that they are small where they are.</param>
public sealed record OutcomeShare(
    OutcomeDefinition Definition, int Events, int Known, int Unknown, Estimate? Share, double? Low95, double? High95, bool IsSmall, string Words);
