using System.Collections.Immutable;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using CsCheck;

namespace Cavaxis.Records.Tests.Access;

public class RoleTableTests
{
    // The whole table as the documentation prints it: R reader, C clinician, L lead, A administrator.
    [Theory]
    [InlineData(Verb.ReadPatient, "RCL")]
    [InlineData(Verb.AdmitPatient, "CL")]
    [InlineData(Verb.Record, "CL")]
    [InlineData(Verb.Correct, "CL")]
    [InlineData(Verb.ShareForOpinion, "CL")]
    [InlineData(Verb.TransferPatient, "L")]
    [InlineData(Verb.ReadOutcomes, "L")]
    [InlineData(Verb.ChangeRules, "L")]
    [InlineData(Verb.ReadAudit, "LA")]
    [InlineData(Verb.KeepPeople, "A")]
    [InlineData(Verb.KeepStore, "A")]
    public void Each_verb_is_for_these_roles_and_no_others(Verb verb, string roles) =>
        Assert.Equal(roles, string.Concat(Enum.GetValues<Role>().Where(r => RoleTable.Allows(r, verb)).Select(static r => r.ToString()[0])));

    [Fact]
    public void Every_verb_stands_in_the_table_and_a_role_that_is_none_may_nothing()
    {
        Assert.Equal(11, Enum.GetValues<Verb>().Length);
        Assert.All(Enum.GetValues<Verb>(), static verb => Assert.False(RoleTable.Allows((Role)99, verb)));
    }

    [Fact]
    public void What_is_outside_ones_programmes_is_decided_as_what_does_not_exist()
    {
        Gen<Role> role = Gen.Enum<Role>();
        Gen<Verb> verb = Gen.Enum<Verb>();
        Gen.Select(role.Nullable(), role.Nullable(), verb, Gen.Bool).Sample(static (own, other, verb, active) =>
        {
            ImmutableSortedDictionary<string, Role>.Builder roles = ImmutableSortedDictionary.CreateBuilder<string, Role>(StringComparer.Ordinal);
            if (own is Role here)
            {
                roles["here"] = here;
            }

            if (other is Role there)
            {
                roles["there"] = there;
            }

            Person person = new(Identifier.Of("anna"), "Anna (invented)", roles.ToImmutable(), active, null, 1);
            AccessDecision decision = AccessRule.Decide(person, verb, Identifier.Of("here"));
            Assert.Equal(!active || own is null ? AccessRule.Decide(person, verb, null) : RoleTable.Allows(own.Value, verb) ? AccessDecision.Granted : AccessDecision.NotAllowed, decision);
        });
    }
}
