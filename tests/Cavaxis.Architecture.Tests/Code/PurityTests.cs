using Cavaxis.Architecture.Tests.Rooms;

namespace Cavaxis.Architecture.Tests.Code;

public class PurityTests
{
    private static readonly IReadOnlyList<Use> Offences = CodeScan.Uses(typeof(Offender).Assembly.Location, typeof(Offender).FullName!);

    /// <summary>Words of exceptions that only a mistake in this program can raise, and of one row of the validation table.</summary>
    public static TheoryData<Room> Engines => [.. Room.Engines];

    public static TheoryData<Room> Rooms => [.. Room.All.Where(static r => r.Name != "Cli")];

    [Theory]
    [MemberData(nameof(Engines))]
    public void An_engine_knows_neither_disk_nor_net_nor_clock_nor_chance_nor_machine(Room room)
    {
        IReadOnlyList<Use> uses = CodeScan.Uses(room.Assembly.Location);
        Assert.True(uses.Count > 100, "the assembly was not read");
        AssertNone(uses.Where(Impurity.IsOutside));
    }

    [Theory]
    [InlineData(nameof(Offender.DiskInALambda), "System.IO.File")]
    [InlineData(nameof(Offender.ClockInAnIterator), "System.DateTime")]
    [InlineData(nameof(Offender.ChanceInATask), "System.Random")]
    [InlineData(nameof(Offender.SeededByTheClock), "System.Random")]
    [InlineData(nameof(Offender.Machine), "System.Environment")]
    [InlineData(nameof(Offender.Net), "System.Net.Http.HttpClient")]
    [InlineData(nameof(Offender.Speaks), "System.Console")]
    [InlineData(nameof(Offender.Culture), "System.Globalization.CultureInfo")]
    public void Each_of_them_is_found_even_in_lambdas_iterators_and_tasks(string member, string type) =>
        Assert.Contains(Offences, u => Impurity.IsOutside(u) && u.Type == type && u.By.Contains(member, StringComparison.Ordinal) | u.By.Contains("<>c", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_room_asks_the_thread_for_its_culture(Room room)
    {
        IReadOnlyList<Use> uses = CodeScan.Uses(room.Assembly.Location);
        AssertNone(uses.Where(Impurity.AsksTheCulture));
        AssertNone(Impurity.InterpolatedWithoutCulture(uses));
    }

    [Fact]
    public void Each_question_to_the_culture_is_found()
    {
        Assert.All([nameof(Offender.Comma), nameof(Offender.Point), nameof(Offender.Turkish)], static member =>
            Assert.Contains(Offences, u => Impurity.AsksTheCulture(u) && u.By.Contains(member, StringComparison.Ordinal)));
        Assert.Contains(Impurity.InterpolatedWithoutCulture(Offences), static by => by.Contains(nameof(Offender.Interpolated), StringComparison.Ordinal));
    }

    private static void AssertNone<T>(IEnumerable<T> found)
    {
        string[] all = [.. found.Select(static f => f!.ToString()!).Distinct()];
        Assert.True(all.Length == 0, string.Join('\n', all));
    }
}
