using Cavaxis.Records.Events;
using Cavaxis.Records.Store;

namespace Cavaxis.Records.Patients;

/// <summary>A patient who was taken in.</summary>
/// <param name="Patient">The identifier: 128 bits of chance, which no one guesses.</param>
/// <param name="Outcome">The admission and what was written down with it, as kept.</param>
public sealed record Admission(Identifier Patient, AppendOutcome Outcome);
