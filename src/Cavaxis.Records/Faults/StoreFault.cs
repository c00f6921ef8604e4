namespace Cavaxis.Records.Faults;

/// <summary>One refusal of a store, told so that a person can act on it. Never holds a password or a patient's data.</summary>
/// <param name="Code">Stable kind of refusal.</param>
/// <param name="Found">What was found.</param>
/// <param name="Accepted">What is needed.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record StoreFault(StoreFaultCode Code, string Found, string Accepted, string Remedy)
{
    /// <summary>One line: what was found, what is needed, remedy.</summary>
    public override string ToString() => $"store of records: {Found}; needed: {Accepted}. {Remedy}";
}
