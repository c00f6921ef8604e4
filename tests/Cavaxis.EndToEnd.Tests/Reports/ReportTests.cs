using System.Text.RegularExpressions;
using Cavaxis.EndToEnd.Tests.Plans;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Search;
using UglyToad.PdfPig;

namespace Cavaxis.EndToEnd.Tests.Reports;

public partial class ReportTests
{
    public static TheoryData<string> Demos => DemoCase.Names;

    [Theory]
    [MemberData(nameof(Demos))]
    public void An_HTML_report_stands_alone_and_carries_the_caution(string name)
    {
        using WorkFolder work = new();
        string html = Written(name, work["plan.html"]);
        Assert.StartsWith("<!DOCTYPE html>", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch(Foreign(), html);
        string seen = Seen(html);
        Assert.Contains(Squeezed(Planner.Caution), Squeezed(seen), StringComparison.Ordinal);
        Assert.DoesNotMatch(Words.Safe, seen);
        Assert.Contains("invented", seen, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("<img src=\"picture.png\">")]
    [InlineData("<script>1</script>")]
    [InlineData("<link rel=stylesheet href=a.css>")]
    [InlineData("<a href=\"https:" + "//example.org\">x</a>")]
    [InlineData("<style>@import 'a.css'</style>")]
    [InlineData("<style>b { background: url(a.png) }</style>")]
    public void What_would_reach_outside_is_recognised(string html) => Assert.Matches(Foreign(), html);

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_PDF_report_opens_and_carries_the_caution_on_every_page(string name)
    {
        using WorkFolder work = new();
        Written(name, work["plan.pdf"]);
        using PdfDocument pdf = PdfDocument.Open(work["plan.pdf"]);
        Assert.True(pdf.NumberOfPages > 0);
        Assert.All(pdf.GetPages(), static page =>
        {
            Assert.Contains(Squeezed(Planner.Caution), Squeezed(page.Text), StringComparison.Ordinal);
            Assert.DoesNotMatch(Words.Safe, string.Join(' ', page.GetWords().Select(static w => w.Text)));
        });
    }

    [Theory]
    [InlineData("plan.html")]
    [InlineData("plan.pdf")]
    public void The_same_plan_gives_the_same_report_bytes(string file)
    {
        using WorkFolder work = new();
        string[] environments = ["C", "de_DE.ISO-8859-1"];
        byte[][] reports = [.. environments.Select(locale =>
        {
            string path = work[locale + file];
            Ended ended = CavaxisProcess.Run(
                ["plan", DemoCase.Small, "--anatomies", "500", "--report", path],
                new Dictionary<string, string> { ["LC_ALL"] = locale, ["TZ"] = locale == "C" ? "UTC" : "Pacific/Kiritimati" });
            Assert.Equal(0, ended.ExitCode);
            return File.ReadAllBytes(path);
        })];
        Assert.Equal(reports[0], reports[1]);
    }

    [Fact]
    public void The_report_shows_the_plan_that_was_chosen()
    {
        using WorkFolder work = new();
        string second = PlanJson.Of(DemoCase.Plan("tall-man-severe-lung-failure.json", "--json")).Plans[2].Name;
        CavaxisProcess.Run("plan", DemoCase.PathOf("tall-man-severe-lung-failure.json"), "--anatomies", "1000", "--plan", "3", "--report", work["third.html"]);
        Assert.Contains(second, Seen(File.ReadAllText(work["third.html"])), StringComparison.Ordinal);
    }

    private static string Written(string name, string path)
    {
        Ended ended = CavaxisProcess.Run("plan", DemoCase.PathOf(name), "--anatomies", "1000", "--report", path);
        Assert.InRange(ended.ExitCode, 0, 1);
        Assert.Equal(string.Empty, ended.Complaints);
        Assert.Equal([Path.GetFileName(path)], Directory.GetFiles(Path.GetDirectoryName(path)!).Select(Path.GetFileName));
        return File.ReadAllText(path);
    }

    private static string Seen(string html) => System.Net.WebUtility.HtmlDecode(Tags().Replace(Style().Replace(html, " "), " "));

    private static string Squeezed(string text) => Blanks().Replace(text, string.Empty);

    // Anything that a browser would fetch or run: sources, links out, scripts, imports.
    [GeneratedRegex("""<script|<link|<iframe|<object|<embed|<img[^>]+src\s*=\s*"?(?!data:)|(href|src)\s*=\s*["']?(https?:|//|file:)|@import|url\((?!#|["']?data:)""", RegexOptions.IgnoreCase)]
    private static partial Regex Foreign();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex("<style.*?</style>", RegexOptions.Singleline | RegexOptions.IgnoreCase)]
    private static partial Regex Style();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
