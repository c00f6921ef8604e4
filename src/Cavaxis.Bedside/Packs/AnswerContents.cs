namespace Cavaxis.Bedside.Packs;

/// <summary>What an answer holds.</summary>
/// <param name="Format">Always <see cref="PackFormat.AnswerName"/>.</param>
/// <param name="Version">Version of the contents.</param>
/// <param name="PackId">The pack that it answers.</param>
/// <param name="PackSha256">SHA-256 of that pack's file.</param>
/// <param name="AnswerId">32 digits of chance, by which the same answer coming twice is known.</param>
/// <param name="Answer">The answer.</param>
/// <param name="AnsweredBy">Who answers, in words of their own; empty for none.</param>
public sealed record AnswerContents(string Format, int Version, string PackId, string PackSha256, string AnswerId, string Answer, string AnsweredBy);
