using System.Text.RegularExpressions;

namespace Cavaxis.Architecture.Tests.Sources;

public partial class KeptTextTests
{
    // Names of schemas and formats that must be written as they are; nothing is fetched from them. DOIs name sources. The number is that of the reader's own machine.
    private static readonly HashSet<string> NamedHosts = ["json-schema.org", "www.w3.org", "doi.org", "127.0.0.1", "hl7.org", "terminology.hl7.org", "loinc.org", "unitsofmeasure.org", "www.apache.org"];

    private static readonly string[] TextEndings = [".cs", ".csproj", ".props", ".slnx", ".json", ".md", ".yml", ".yaml", ".csv", ".txt", ".html", ".svg", ".config", ""];

    private static readonly string[] Kept = [.. Repository.Files(Repository.Root).Where(static f => TextEndings.Contains(Path.GetExtension(f)))];

    [Fact]
    public void No_kept_text_names_a_path_of_one_machine() => AssertNone(static text => MachinePath().IsMatch(text));

    [Theory]
    [InlineData("see /wo" + "rk/notes")]
    [InlineData("\"/ro" + "ot/.nuget\"")]
    [InlineData("cp x /ho" + "me/anna/x")]
    [InlineData("C:\\Us" + "ers\\anna")]
    [InlineData("/o" + "pt/dotnet")]
    public void A_path_of_one_machine_is_found(string text) => Assert.Matches(MachinePath(), text);

    [Fact]
    public void No_kept_text_names_a_host_beyond_those_that_name_formats_and_sources() =>
        AssertNone(static text => Hosts(text).Any(static host => !NamedHosts.Contains(host)));

    [Theory]
    [InlineData("https:" + "//registry.example.org/v3/index.json", "registry.example.org")]
    [InlineData("http:" + "//mirror:8081/", "mirror")]
    public void A_host_is_found(string text, string host) => Assert.Equal([host], Hosts(text));

    [Fact]
    public void Lines_end_as_on_Unix_and_files_with_a_line_feed() =>
        AssertNone(static text => text.Length > 0 && (text.Contains('\r', StringComparison.Ordinal) || text[^1] != '\n'));

    [Fact]
    public void The_folder_of_documents_holds_the_models_and_the_schemas() => Assert.All(
        ["README.md", "docs/architecture.md", "docs/safety.md", "docs/validation.md", "docs/case-file.md", "docs/case.schema.json", "docs/plan.schema.json", "docs/rules.schema.json", "docs/models/blood.md", "docs/models/devices.md", "docs/models/anatomy.md"],
        static path => Assert.True(new FileInfo(Path.Combine(Repository.Root, path)) is { Exists: true, Length: > 200 }, path));

    private static IEnumerable<string> Hosts(string text) => Address().Matches(text).Select(static m => m.Groups[1].Value);

    private static void AssertNone(Func<string, bool> wrong)
    {
        Assert.True(Kept.Length > 300);
        string[] found = [.. Kept.Where(f => wrong(File.ReadAllText(f))).Select(Repository.Short)];
        Assert.True(found.Length == 0, string.Join('\n', found));
    }

    [GeneratedRegex(@"(?<![\w.<])/(wo" + @"rk|ro" + @"ot|ho" + @"me|o" + @"pt|Us" + @"ers)/[\w.]|[A-Z]:\\Us" + @"ers\\")]
    private static partial Regex MachinePath();

    [GeneratedRegex(@"\bhttps?://(?!\{)([\w.-]+)")]
    private static partial Regex Address();
}
