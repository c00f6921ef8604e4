namespace Cavaxis.Planning.Case;

/// <summary>What a field of the case file means, in plain words. Goes into the published schema and into faults.</summary>
/// <param name="text">One sentence.</param>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Class | AttributeTargets.Field)]
public sealed class MeaningAttribute(string text) : Attribute
{
    /// <summary>The sentence.</summary>
    public string Text { get; } = text;
}
