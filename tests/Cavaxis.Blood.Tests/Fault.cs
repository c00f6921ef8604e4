using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Tests;

/// <summary>Asserts that an entry refuses an input and names the field.</summary>
internal static class Fault
{
    internal static void Names(string field, Action act) =>
        Assert.Equal(field, Assert.Single(Assert.Throws<InputFaultException>(act).Faults).Field);
}
