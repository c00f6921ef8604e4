using System.Collections.Immutable;
using Cavaxis.Records.Access;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>A person as they are printed.</summary>
/// <param name="Id">Name to sign in with.</param>
/// <param name="Name">Name for other people.</param>
/// <param name="Roles">Role in each programme that the asker keeps.</param>
/// <param name="Active">False where they were closed out.</param>
public sealed record PersonSheet(string Id, string Name, ImmutableSortedDictionary<string, Role> Roles, bool Active)
{
    /// <summary>Of a person.</summary>
    /// <param name="person">The person.</param>
    /// <param name="programmes">Programmes whose roles may be told.</param>
    /// <returns>The same for people.</returns>
    public static PersonSheet Of(Person person, IReadOnlySet<string> programmes)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(programmes);
        return new(person.Id.Text, person.Name, person.Roles.RemoveRange(person.Roles.Keys.Where(p => !programmes.Contains(p))), person.IsActive);
    }
}
