namespace Cavaxis.Reports.Documents;

/// <summary>Running text.</summary>
/// <param name="Text">The words; line feeds stay line breaks.</param>
public sealed record Paragraph(string Text) : ReportBlock;
