namespace Cavaxis.Reports.Documents;

/// <summary>What follows starts on a new printed page.</summary>
public sealed record PageBreak : ReportBlock;
