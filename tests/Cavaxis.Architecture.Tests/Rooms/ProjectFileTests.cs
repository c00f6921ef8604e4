using System.Xml.Linq;
using Cavaxis.Architecture.Tests.Sources;

namespace Cavaxis.Architecture.Tests.Rooms;

public class ProjectFileTests
{
    public static TheoryData<Room> Rooms => [.. Room.All];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_project_names_exactly_the_rooms_and_packages_of_the_design(Room room)
    {
        XDocument project = XDocument.Load(Path.Combine(Repository.Root, "src", $"Cavaxis.{room.Name}", $"Cavaxis.{room.Name}.csproj"));
        Assert.Equal(room.Project.Select(static n => $"../Cavaxis.{n}/Cavaxis.{n}.csproj"), Named(project, "ProjectReference"));
        Assert.Equal(room.Packages, Named(project, "PackageReference"));
        Assert.Empty(Named(project, "Reference"));
    }

    [Fact]
    public void A_reference_too_many_is_found() => Assert.Equal(
        ["../Cavaxis.Cli/Cavaxis.Cli.csproj"],
        Named(XDocument.Parse("""<Project><ItemGroup><ProjectReference Include="../Cavaxis.Cli/Cavaxis.Cli.csproj" /></ItemGroup></Project>"""), "ProjectReference"));

    [Fact]
    public void There_are_no_rooms_beside_those_of_the_design() => Assert.Equal(
        Room.All.Select(static r => $"Cavaxis.{r.Name}").Order(StringComparer.Ordinal),
        Directory.GetDirectories(Path.Combine(Repository.Root, "src")).Select(Path.GetFileName).Order(StringComparer.Ordinal));

    [Fact]
    public void Nothing_in_the_source_refers_to_a_test_project()
    {
        string[] projects = Directory.GetFiles(Path.Combine(Repository.Root, "src"), "*.csproj", SearchOption.AllDirectories);
        Assert.NotEmpty(projects);
        Assert.All(projects, static p => Assert.DoesNotContain("tests/", File.ReadAllText(p), StringComparison.OrdinalIgnoreCase));
    }

    // The compiler then enforces that every public member is documented (CS1591) and that no warning stays.
    [Fact]
    public void Documentation_of_public_members_is_enforced_by_the_compiler()
    {
        XDocument source = XDocument.Load(Path.Combine(Repository.Root, "src", "Directory.Build.props"));
        XDocument whole = XDocument.Load(Path.Combine(Repository.Root, "Directory.Build.props"));
        Assert.Equal("true", Assert.Single(source.Descendants("GenerateDocumentationFile")).Value);
        Assert.Equal("true", Assert.Single(whole.Descendants("TreatWarningsAsErrors")).Value);
        Assert.Equal("enable", Assert.Single(whole.Descendants("Nullable")).Value);
        IEnumerable<string> files = Directory.GetFiles(Path.Combine(Repository.Root, "src"), "*.csproj", SearchOption.AllDirectories);
        Assert.All(files, static p => Assert.DoesNotContain(
            XDocument.Load(p).Descendants(), static e => e.Name.LocalName is "NoWarn" or "WarningsNotAsErrors" or "TreatWarningsAsErrors"));
        Assert.All(Repository.SourceFiles(), static f => Assert.DoesNotContain("CS1591", File.ReadAllText(f), StringComparison.Ordinal));
    }

    private static IEnumerable<string> Named(XDocument project, string element) =>
        project.Descendants(element).Select(static e => e.Attribute("Include")!.Value);
}
