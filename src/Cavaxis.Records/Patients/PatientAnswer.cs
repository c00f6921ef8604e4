using Cavaxis.Records.Access;
using Cavaxis.Records.Faults;

namespace Cavaxis.Records.Patients;

/// <summary>What a person gets who asked for something about patients.</summary>
/// <typeparam name="T">What it is.</typeparam>
/// <param name="Decision">Whether they may.</param>
/// <param name="Value">What was asked for; only where it was granted.</param>
/// <param name="AuditFault">Why the looking could not be kept in the audit; null where it was. It is given all the same: a full disk must not close a record at the bedside.</param>
public sealed record PatientAnswer<T>(AccessDecision Decision, T? Value = null, StoreFault? AuditFault = null)
    where T : class;
