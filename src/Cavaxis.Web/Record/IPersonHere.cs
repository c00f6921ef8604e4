using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;

namespace Cavaxis.Web.Record;

/// <summary>Who works in this window.</summary>
public interface IPersonHere
{
    /// <summary>The person, with the roles that they have at this moment.</summary>
    /// <returns>Who is signed in; whoever sits at this machine while nobody has been registered.</returns>
    /// <exception cref="InputFaultException">People are registered and no one is signed in here (any more).</exception>
    Task<Person> NowAsync();
}
