namespace Cavaxis.Planning.Case;

/// <summary>Greatest length of a text or list in the case file.</summary>
/// <param name="longest">Characters of a text, or entries of a list.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class TextAttribute(int longest) : Attribute
{
    /// <summary>Characters of a text, or entries of a list.</summary>
    public int Longest { get; } = longest;
}
