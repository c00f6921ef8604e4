using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using static ArchUnitNET.Fluent.ArchRuleDefinition;
using Model = ArchUnitNET.Domain.Architecture;

namespace Cavaxis.Architecture.Tests.Rooms;

public class RoomDependencyTests
{
    private static readonly Model Model = new ArchLoader()
        .LoadAssemblies([.. Room.All.Select(static r => r.Assembly), typeof(RoomDependencyTests).Assembly]).Build();

    public static TheoryData<Room> Rooms => [.. Room.All];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_knows_only_the_rooms_below_it(Room room)
    {
        List<string> unknown = Trespasses(Namespace(room), room);
        Assert.True(unknown.Count == 0, string.Join('\n', unknown));
    }

    [Fact]
    public void A_type_that_looks_upwards_is_found() =>
        Assert.Contains(Trespasses("Cavaxis.Architecture.Tests.Rooms", Room.Of("Blood")), static t => t.Contains(nameof(LooksUpwards), StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void The_compiled_room_refers_to_no_other_rooms(Room room)
    {
        string[] referred = [.. room.Assembly.GetReferencedAssemblies().Select(static a => a.Name!).Where(static n => n.StartsWith("Cavaxis.", StringComparison.Ordinal))];
        Assert.Subset(room.MayKnow.Select(static n => $"Cavaxis.{n}").ToHashSet(), referred.ToHashSet());
    }

    [Fact]
    public void Reports_and_validation_do_not_know_each_other()
    {
        Assert.DoesNotContain("Validation", Room.Of("Reports").MayKnow);
        Assert.DoesNotContain("Reports", Room.Of("Validation").MayKnow);
        Assert.Equal(15, Room.Of("Cli").MayKnow.Count);
        Assert.Empty(Room.Of("Quantities").MayKnow);
    }

    [Fact]
    public void The_command_line_and_the_workspace_do_not_know_each_other()
    {
        Assert.DoesNotContain("Web", Room.Of("Cli").MayKnow);
        Assert.DoesNotContain("Cli", Room.Of("Web").MayKnow);
        Assert.Equal(14, Room.Of("Web").MayKnow.Count);
    }

    [Fact]
    public void No_room_but_the_workspace_knows_the_server() =>
        Assert.True(Types().That().DoNotResideInNamespaceMatching(@"^Cavaxis\.(Web|Architecture)").Should()
            .NotDependOnAnyTypesThat().ResideInNamespaceMatching(@"^Microsoft\.(AspNetCore|Extensions|JSInterop)").HasNoViolations(Model));

    [Fact]
    public void No_room_but_the_workspace_and_the_records_knows_a_database() =>
        Assert.True(Types().That().DoNotResideInNamespaceMatching(@"^Cavaxis\.(Web|Records|Architecture)").Should()
            .NotDependOnAnyTypesThat().ResideInNamespaceMatching(@"^(Microsoft\.(Data|EntityFrameworkCore)|Npgsql|System\.Data)").HasNoViolations(Model));

    [Fact]
    public void Records_know_no_engine_and_no_engine_knows_them()
    {
        Assert.Equal(["Quantities"], Room.Of("Records").MayKnow);
        Assert.DoesNotContain(Room.Engines, static room => room.MayKnow.Contains("Records"));
    }

    [Fact]
    public void No_room_but_the_command_line_knows_the_console_library() =>
        Assert.True(Types().That().DoNotResideInNamespaceMatching(@"^Cavaxis\.(Cli|Architecture)").Should()
            .NotDependOnAnyTypesThat().ResideInNamespaceMatching(@"^Spectre\.Console").HasNoViolations(Model));

    [Fact]
    public void The_command_line_is_found_to_know_it() =>
        Assert.False(Types().That().ResideInNamespaceMatching(@"^Cavaxis\.Cli").Should()
            .NotDependOnAnyTypesThat().ResideInNamespaceMatching(@"^Spectre\.Console").HasNoViolations(Model));

    private static string Namespace(Room room) => $"Cavaxis.{room.Name}";

    private static List<string> Trespasses(string home, Room room)
    {
        HashSet<string> allowed = [.. room.MayKnow.Append(room.Name).Select(static n => $"Cavaxis.{n}")];
        return [.. Model.Types.Where(t => IsIn(t, home)).SelectMany(type => type.Dependencies
            .Where(d => d.Target.FullName.StartsWith("Cavaxis.", StringComparison.Ordinal) && !IsIn(d.Target, home) && !allowed.Any(a => IsIn(d.Target, a)))
            .Select(d => $"{type.FullName} knows {d.Target.FullName}")).Distinct()];
    }

    private static bool IsIn(IType type, string home) =>
        type.FullName.StartsWith(home + ".", StringComparison.Ordinal);

    /// <summary>Stands for a type of a low room that knows a high one.</summary>
    private static class LooksUpwards
    {
        public static System.Type Above() => typeof(PlanningResult);

        public static double Below(Estimate estimate) => estimate.Value;
    }
}
