namespace Cavaxis.Bedside.Sealing;

/// <summary>One refusal of a sealed file, told so that a person can act on it. Never holds a passphrase or anything of the contents.</summary>
/// <param name="Code">Stable kind of refusal.</param>
/// <param name="Found">What was found.</param>
/// <param name="Accepted">What is needed.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record SealFault(SealFaultCode Code, string Found, string Accepted, string Remedy)
{
    /// <inheritdoc/>
    public override string ToString() => $"pack: {Found}; needed: {Accepted}. {Remedy}";
}
