using Cavaxis.Records.Access;

namespace Cavaxis.Web.Pages.People;

/// <summary>What is being filled in about a person. The password goes when it has been used.</summary>
public sealed class PersonDraft
{
    internal string Name { get; set; } = string.Empty;

    internal string Id { get; set; } = string.Empty;

    internal string Password { get; set; } = string.Empty;

    internal Role Role { get; set; } = Role.Clinician;

    internal void Clear() => (Name, Id, Password, Role) = (string.Empty, string.Empty, string.Empty, Role.Clinician);
}
