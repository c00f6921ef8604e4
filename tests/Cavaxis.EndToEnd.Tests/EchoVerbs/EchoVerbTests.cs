using System.Text;
using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Tests.Case;
using SkiaSharp;

namespace Cavaxis.EndToEnd.Tests.EchoVerbs;

public sealed class EchoVerbTests : IDisposable
{
    private readonly WorkFolder work = new();

    public void Dispose() => work.Dispose();

    [Fact]
    public void A_scene_becomes_a_picture_whose_scale_is_told()
    {
        Ended ended = CavaxisProcess.Run("echo", Scene("cannula-in-bath"), "--out", work["picture.png"], "--json");
        Assert.Equal((0, string.Empty), (ended.ExitCode, WithoutProgress(ended.Err)));
        using JsonDocument made = JsonDocument.Parse(ended.Out);
        using SKBitmap bitmap = SKBitmap.Decode(work["picture.png"]);
        Assert.Equal((512, 512), (bitmap.Width, bitmap.Height));
        Assert.Equal(512, made.RootElement.GetProperty("widthPixels").GetInt32());
        double step = made.RootElement.GetProperty("mmPerPixel").GetDouble();

        // 25 Fr are 25/3 mm: the outermost bright rows of the upper and the lower wall on a column left of the tip (echoes across the lumen follow further down).
        int column = 60;
        int[] bright = [.. Enumerable.Range(0, 512).Where(y => bitmap.GetPixel(column, y).Red > 160)];
        int[] device = [.. bright.Where(y => (y - bright[0]) * step < 10)];
        Assert.InRange((device[^1] - device[0]) * step, (25 / 3.0) - 0.8, (25 / 3.0) + 0.8);
        Assert.Contains("not a certified medical device", made.RootElement.GetProperty("caution").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_loop_becomes_a_gif_or_numbered_pictures()
    {
        string small = work.Write("small.json", File.ReadAllText(Scene("advancing-wire")).Replace("\"widthPixels\": 400", "\"widthPixels\": 96", StringComparison.Ordinal).Replace("\"heightPixels\": 320", "\"heightPixels\": 80", StringComparison.Ordinal));
        Ended gif = CavaxisProcess.Run("echo", small, "--out", work["loop.gif"], "--frames", "3");
        Assert.Equal(0, gif.ExitCode);
        Assert.Contains("3 frames of 96 × 80 pixels", gif.Out, StringComparison.Ordinal);
        using SKCodec codec = SKCodec.Create(work["loop.gif"]);
        Assert.Equal((3, 96, 80), (codec.FrameCount, codec.Info.Width, codec.Info.Height));
        Assert.Equal(0, CavaxisProcess.Run("echo", small, "--out", work["still.png"], "--frames", "2").ExitCode);
        Assert.NotEqual(File.ReadAllBytes(work["still-001.png"]), File.ReadAllBytes(work["still-002.png"]));
    }

    [Fact]
    public void What_cannot_be_done_is_refused_in_words()
    {
        Assert.Equal(("badOption", "--out"), Fault("echo", Scene("wire-in-bath"), "--out", work["picture.jpg"]));
        Assert.Equal(("badOption", "--out"), Fault("echo", Scene("wire-in-bath")));
        Assert.Equal("--frames", Fault("echo", Scene("wire-in-bath"), "--out", work["a.gif"], "--frames", "0").Field);
        Assert.Equal("unreadableFile", Fault("echo", work["none.json"], "--out", work["a.png"]).Code);
        Assert.Equal("malformedText", Fault("echo", work.Write("bad.json", "{"), "--out", work["a.png"]).Code);
        Assert.Equal("--at", Fault("exercise", "answer", work.Folder).Field);
        Assert.Equal("--at", Fault("exercise", "answer", work.Folder, "--at", "3").Field);
        Assert.Equal("unreadableFile", Fault("exercise", "answer", work.Folder, "--not-in-view").Code);
        _ = work.Write("question.json", "{\"cavaxisExercise\":1,\"seed\":-1,\"level\":1}");
        Assert.Equal("malformedText", Fault("exercise", "answer", work.Folder, "--not-in-view").Code);
        Assert.Equal("--out", Fault("exercise", "new").Field);
        Assert.Equal("--level", Fault("exercise", "new", "--level", "9", "--out", work["x"]).Field);
    }

    [Fact]
    public void An_exercise_is_written_without_its_answer_and_judged_with_reasons()
    {
        Assert.Equal(0, CavaxisProcess.Run("exercise", "new", "--seed", "11", "--level", "1", "--out", work["tip"]).ExitCode);
        string question = File.ReadAllText(Path.Combine(work["tip"], "question.json"), Encoding.UTF8);
        Assert.DoesNotContain("truth", question, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Mark the middle of the opening", question, StringComparison.Ordinal);
        using SKBitmap bitmap = SKBitmap.Decode(Path.Combine(work["tip"], "picture.png"));
        Assert.Equal((640, 512), (bitmap.Width, bitmap.Height));

        (int points, JsonElement truth) = Judged("--not-in-view");
        Assert.Equal(0, points);
        string at = FormattableString.Invariant($"{truth.GetProperty("x").GetDouble():F1},{truth.GetProperty("y").GetDouble():F1}");
        Assert.Equal(100, Judged("--at", at).Points);
        Ended words = CavaxisProcess.Run("exercise", "answer", work["tip"], "--at", "320,40");
        Assert.Equal(0, words.ExitCode);
        Assert.Contains("along the cannula", words.Out, StringComparison.Ordinal);
        Assert.Contains("not a certified medical device", words.Out, StringComparison.Ordinal);
    }

    private (int Points, JsonElement Truth) Judged(params string[] answer)
    {
        Ended ended = CavaxisProcess.Run(["exercise", "answer", work["tip"], .. answer, "--json"]);
        Assert.Equal(0, ended.ExitCode);
        using JsonDocument json = JsonDocument.Parse(ended.Out);
        JsonElement score = json.RootElement.GetProperty("score");
        Assert.NotEmpty(score.GetProperty("explanation").EnumerateArray());
        return (score.GetProperty("points").GetInt32(), score.GetProperty("truth").Clone());
    }

    private static (string Code, string Field) Fault(params string[] args)
    {
        (ExitCode code, string json, string err) = InProcess.Run([.. args, "--json"]);
        Assert.Equal((ExitCode.InputError, string.Empty), (code, err));
        (string kind, string field, _, _) = Faults.Of(json)[0];
        return (kind, field);
    }

    private static string Scene(string name) => Path.Combine(RepositoryFolder.Demo, "scenes", $"{name}.json");

    private static string WithoutProgress(string err) => string.Concat(err.Split('\n').Where(static line => !line.Contains(" … ", StringComparison.Ordinal)));
}
