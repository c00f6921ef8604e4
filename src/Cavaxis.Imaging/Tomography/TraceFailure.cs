namespace Cavaxis.Imaging.Tomography;

/// <summary>No axis: what was found instead and what can be done.</summary>
/// <param name="Fault">What kind of failure.</param>
/// <param name="Words">What was measured against which limit, and what can be done.</param>
public sealed record TraceFailure(TraceFault Fault, string Words);
