namespace Cavaxis.Reports.Documents;

/// <summary>A list of short texts.</summary>
/// <param name="Items">At least one text.</param>
/// <param name="Numbered">Numbered from 1, for steps in order.</param>
public sealed record BulletList(IReadOnlyList<string> Items, bool Numbered = false) : ReportBlock;
