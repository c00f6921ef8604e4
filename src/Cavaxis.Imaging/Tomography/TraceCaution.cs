namespace Cavaxis.Imaging.Tomography;

/// <summary>Something about a traced axis that a person should look at.</summary>
/// <param name="Kind">What kind.</param>
/// <param name="Words">What was measured, what it can mean, and what to do.</param>
public sealed record TraceCaution(TraceCautionKind Kind, string Words);
