using Cavaxis.Circulation.Calibration;

namespace Cavaxis.Planning.Running;

/// <summary>A reading of the case file, as calibration takes it.</summary>
/// <param name="Field">Field of the case file.</param>
/// <param name="Observation">The reading.</param>
public sealed record CaseReading(string Field, BedsideObservation Observation);
