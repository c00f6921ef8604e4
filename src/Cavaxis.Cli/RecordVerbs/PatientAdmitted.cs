

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>A patient who was taken in.</summary>
/// <param name="Patient">Identifier.</param>
/// <param name="Programme">Programme.</param>
public sealed record PatientAdmitted(string Patient, string Programme);
