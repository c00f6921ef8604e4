using System.Text.RegularExpressions;

namespace Cavaxis.Architecture.Tests.Sources;

public partial class SourceFileTests
{
    private const int MostLines = 300;

    [Fact]
    public void A_file_is_named_for_the_type_in_it() => AssertNone(
        Repository.SourceFiles().Where(static f => Path.GetFileName(f) != "Program.cs")
            .Where(static f => !HoldsItsType(Path.GetFileNameWithoutExtension(f), File.ReadAllText(f))));

    [Theory]
    [InlineData("Cannula", "namespace A;\n\npublic sealed class Tube;\n", false)]
    [InlineData("Cannula", "namespace A;\n\npublic sealed class Tube\n{\n    private class Cannula;\n}\n", false)]
    [InlineData("Cannula", "namespace A;\n\n// class Cannula\npublic sealed record Cannulae(int X);\n", false)]
    [InlineData("Cannula", "namespace A;\n\npublic sealed record Cannula(int X);\n", true)]
    [InlineData("Cannula", "namespace A;\n\ninternal delegate double Cannula(double x);\n", true)]
    [InlineData("Cannula", "namespace A;\n\ninternal readonly record struct Cannula<T>(T X);\n", true)]
    public void A_file_named_for_another_type_is_found(string name, string text, bool holds) => Assert.Equal(holds, HoldsItsType(name, text));

    [Fact]
    public void A_file_fits_on_a_few_screens()
    {
        AssertNone(Repository.SourceFiles().Where(static f => LineCount(File.ReadAllText(f)) > MostLines));
        Assert.Equal(3, LineCount("a\nb\nc\n"));
    }

    [Fact]
    public void A_namespace_is_the_folder_of_its_file() => AssertNone(Repository.SourceFiles().Where(static f => Path.GetFileName(f) != "Program.cs").Where(static f =>
    {
        string folder = Path.GetDirectoryName(Path.GetRelativePath(Path.Combine(Repository.Root, "src"), f))!;
        return !File.ReadAllText(f).Contains($"\nnamespace {folder.Replace(Path.DirectorySeparatorChar, '.')};", StringComparison.Ordinal)
            && !File.ReadAllText(f).StartsWith($"namespace {folder.Replace(Path.DirectorySeparatorChar, '.')};", StringComparison.Ordinal);
    }));

    [Fact]
    public void Nothing_is_left_for_later() => AssertNone(Repository.SourceFiles().Where(static f => Unfinished().IsMatch(File.ReadAllText(f))));

    [Theory]
    [InlineData("// TO" + "DO: more")]
    [InlineData("// FIX" + "ME")]
    [InlineData("throw new NotImplemented" + "Exception();")]
    public void What_is_left_for_later_is_found(string text) => Assert.Matches(Unfinished(), text);

    [Fact]
    public void No_test_is_skipped_but_for_open_data_that_is_not_there() => AssertNone(Repository.TestFiles()
        .Where(static f => Path.GetFileName(f) != "OpenScanFactAttribute.cs") // Scans lie beside the repository, not in it; where they do not, the test says so.
        .Where(static f => Skipped().IsMatch(File.ReadAllText(f))));

    [Theory]
    [InlineData("[Fact(Sk" + "ip = \"later\")]")]
    [InlineData("[Theory(DisplayName = \"x\", Sk" + "ip=\"later\")]")]
    [InlineData("#if fal" + "se")]
    public void A_skipped_test_is_found(string text) => Assert.Matches(Skipped(), text);

    [Fact]
    public void An_analyser_is_silenced_only_with_a_reason_on_the_same_line() => AssertNone(
        Repository.SourceFiles().Concat(Repository.TestFiles())
            .SelectMany(static f => File.ReadLines(f).Select(line => (File: f, Line: line)))
            .Where(static l => SilencedWithoutReason().IsMatch(l.Line)).Select(static l => l.File));

    [Theory]
    [InlineData("#pragma warning " + "disable CA1031")]
    [InlineData("#pragma warning " + "disable")]
    public void A_silenced_analyser_without_a_reason_is_found(string line) => Assert.Matches(SilencedWithoutReason(), line);

    private static bool HoldsItsType(string name, string text) => Regex.IsMatch(
        text, $@"^(public |internal |file )((abstract|sealed|static|readonly|ref|partial) )*(class|record struct|record class|record|struct|interface|enum|delegate [\w<>?.]+) {name}\b(?!\w)", RegexOptions.Multiline);

    private static int LineCount(string text) => text.Count(static c => c == '\n');

    private static void AssertNone(IEnumerable<string> files)
    {
        string[] found = [.. files.Select(Repository.Short).Distinct()];
        Assert.True(found.Length == 0, string.Join('\n', found));
        Assert.True(Repository.SourceFiles().Count > 100 && Repository.TestFiles().Count > 30);
    }

    [GeneratedRegex(@"\b(TO" + @"DO|FIX" + @"ME|HA" + @"CK|X" + @"XX)\b|NotImplemented" + "Exception")]
    private static partial Regex Unfinished();

    [GeneratedRegex(@"\bSk" + @"ip\s*=|#if\s+fal" + "se")]
    private static partial Regex Skipped();

    [GeneratedRegex(@"^\s*#pragma warning " + @"disable\s*[\w, ]*$")]
    private static partial Regex SilencedWithoutReason();
}
