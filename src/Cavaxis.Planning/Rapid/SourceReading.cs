namespace Cavaxis.Planning.Rapid;

/// <summary>One source's criteria counted. A count is no verdict: sources weigh their criteria differently.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Citation">The source.</param>
/// <param name="For">Criteria met.</param>
/// <param name="Against">Criteria by which it refuses or does not take the patient.</param>
/// <param name="NoObjection">Reasons to refuse that do not hold.</param>
/// <param name="NotYet">Criteria that it would wait for.</param>
/// <param name="Open">Criteria that are unknown.</param>
/// <param name="AgainstInWords">Those that speak against, in words.</param>
public sealed record SourceReading(string Id, string Citation, int For, int Against, int NoObjection, int NotYet, int Open, IReadOnlyList<string> AgainstInWords);
