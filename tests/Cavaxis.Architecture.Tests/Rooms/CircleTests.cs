using ArchUnitNET.Domain;
using ArchUnitNET.Fluent.Slices;
using ArchUnitNET.Loader;
using Model = ArchUnitNET.Domain.Architecture;

namespace Cavaxis.Architecture.Tests.Rooms;

public class CircleTests
{
    /// <summary>
    /// Folders of one room that know each other. Case and Json: the reader of records binds to the attributes that stand
    /// on the records of the case. In Planning the folders of one computation share a context: search, needs, circuit and fit
    /// fill the records of the plan, and the builder of steps reads both; the outlook puts plans on the circulation.
    /// In Circulation the generic solver, its equations and what reads them are laid over each other by their type arguments. The list may shrink, and must not grow unseen.
    /// </summary>
    private static readonly string[] KnownCircles =
    [
        "Cavaxis.Circulation.Equations, Cavaxis.Circulation.Solver",
        "Cavaxis.Planning.Case, Cavaxis.Planning.Json",
        "Cavaxis.Planning.Circuit, Cavaxis.Planning.Fit, Cavaxis.Planning.Information, Cavaxis.Planning.Needs, Cavaxis.Planning.Outlook, Cavaxis.Planning.Plans, Cavaxis.Planning.Running, Cavaxis.Planning.Search, Cavaxis.Planning.Steps",
    ];

    private static readonly Model Own = new ArchLoader().LoadAssemblies([.. Room.All.Select(static r => r.Assembly)]).Build();

    [Fact]
    public void Rooms_form_no_circle() => Assert.Empty(Circles(Own, "Cavaxis", 2));

    [Fact]
    public void Folders_of_a_room_form_no_circles_but_the_known_ones()
    {
        string[] found = Circles(Own, "Cavaxis", 3);
        Assert.True(KnownCircles.SequenceEqual(found), string.Join('\n', found));
    }

    [Fact]
    public void A_circle_is_found()
    {
        const string Home = "Cavaxis.Architecture.Tests.Rooms.Circle";
        Model tests = new ArchLoader().LoadAssemblies(typeof(CircleTests).Assembly).Build();
        Assert.Equal([$"{Home}.One, {Home}.Two"], Circles(tests, Home, 6));
        Assert.False(SliceRuleDefinition.Slices().Matching($"{Home}.(*)").Should().BeFreeOfCycles().HasNoViolations(tests));
    }

    /// <summary>Groups of namespaces, cut to a depth, that reach each other both ways.</summary>
    private static string[] Circles(Model model, string home, int depth)
    {
        Dictionary<string, HashSet<string>> known = [];
        foreach (IType type in model.Types.Where(t => IsIn(t, home)))
        {
            string from = Cut(type.Namespace.FullName, depth);
            known.TryAdd(from, []);
            known[from].UnionWith(type.Dependencies.Where(d => IsIn(d.Target, home)).Select(d => Cut(d.Target.Namespace.FullName, depth)).Where(to => to != from));
        }

        Dictionary<string, HashSet<string>> reached = known.Keys.ToDictionary(static k => k, k => Reached(known, k));
        return [.. known.Keys
            .Select(k => string.Join(", ", known.Keys.Where(o => o == k || (reached[k].Contains(o) && reached[o].Contains(k))).Order(StringComparer.Ordinal)))
            .Where(static group => group.Contains(',', StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal)];
    }

    private static HashSet<string> Reached(Dictionary<string, HashSet<string>> known, string from)
    {
        HashSet<string> reached = [];
        Stack<string> open = new([from]);
        while (open.TryPop(out string? at))
        {
            foreach (string next in known.GetValueOrDefault(at, []).Where(reached.Add))
            {
                open.Push(next);
            }
        }

        return reached;
    }

    private static bool IsIn(IType type, string home) => type.FullName.StartsWith(home + ".", StringComparison.Ordinal);

    private static string Cut(string name, int depth) => string.Join('.', name.Split('.').Take(depth));
}
