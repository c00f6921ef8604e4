using System.Collections.Immutable;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Tests.Record;

/// <summary>A person with one role, here without signing in.</summary>
internal sealed record SomePerson(string Id, string Programme, Role Role) : IPersonHere
{
    public static SomePerson Lead { get; } = new("lena", "own", Role.Lead);

    public Task<Person> NowAsync() => Task.FromResult(
        new Person(Identifier.Of(Id), Id, ImmutableSortedDictionary.Create<string, Role>(StringComparer.Ordinal).Add(Programme, Role), true, null, 1));
}
