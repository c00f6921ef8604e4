using System.Text.RegularExpressions;

namespace Cavaxis.EndToEnd.Tests.Plans;

/// <summary>Words that no output may hold.</summary>
public static partial class Words
{
    /// <summary>The promise that no plan can keep.</summary>
    [GeneratedRegex(@"\bsafe(ly|r|st|ty)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    public static partial Regex Safe { get; }
}
