namespace Cavaxis.Reports.Documents;

/// <summary>A framed message.</summary>
/// <param name="Kind">How grave it is.</param>
/// <param name="Title">One line.</param>
/// <param name="Text">The words; may be empty.</param>
public sealed record Callout(CalloutKind Kind, string Title, string Text = "") : ReportBlock;
