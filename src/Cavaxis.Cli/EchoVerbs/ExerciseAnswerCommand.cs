using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Imaging.Exercises;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.EchoVerbs;

/// <summary><c>exercise answer</c>: judges an answer and explains it.</summary>
/// <param name="output">Where results go.</param>
public sealed class ExerciseAnswerCommand(CommandOutput output) : Command<ExerciseAnswerCommand.Settings>
{
    private const int LargestQuestion = 64 * 1024;

    /// <summary>What <c>exercise answer</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>Folder of the exercise.</summary>
        [CommandArgument(0, "<FOLDER>")]
        [Description("Folder that `exercise new` has written.")]
        public required string Folder { get; init; }

        /// <summary>The mark.</summary>
        [CommandOption("--at <COLUMN,ROW>")]
        [Description("Where the tip is, in pixels from the upper left corner.")]
        public string? At { get; init; }

        /// <summary>The other answer.</summary>
        [CommandOption("--not-in-view")]
        [Description("Says that the tip is not in view.")]
        public bool NotInView { get; init; }

        /// <summary>JSON instead of words.</summary>
        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.At is null != settings.NotInView)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--at", settings.At is null ? "(nothing)" : InputFault.Shown(settings.At), "one of --at COLUMN,ROW and --not-in-view", "Give one answer."));
        }

        (double X, double Y)? mark = settings.At is string at ? Mark(at) : null;
        (ulong seed, int level) = Question(Path.Combine(settings.Folder, ExerciseFile.QuestionName));
        Exercise exercise = ProgressNote.While(output, "Rendering", () => ExerciseMaker.Make(seed, level));
        ExerciseAnswer answer = mark is (double x, double y) ? ExerciseAnswer.At(exercise.Frame, x, y) : ExerciseAnswer.NotInView;
        ExerciseScore score = ExerciseJudge.Judge(exercise, answer);
        if (settings.Json)
        {
            output.Json(new ExerciseJudged(seed, level, score, Planner.Caution));
        }
        else
        {
            Tell(score);
        }

        return (int)ExitCode.Done;
    }

    private static (double X, double Y) Mark(string text)
    {
        string[] parts = text.Split(',');
        return parts.Length == 2
            && double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double x) && double.IsFinite(x)
            && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double y) && double.IsFinite(y)
            ? (x, y)
            : throw new InputFaultException(new InputFault(
                FaultCode.BadOption, "--at", text.Length == 0 ? "(nothing)" : InputFault.Shown(text), "two numbers with a comma between: column and row", "Give the mark in pixels, such as 320,240."));
    }

    private static (ulong Seed, int Level) Question(string path)
    {
        byte[] bytes = InputFile.ReadAll(path, LargestQuestion);
        try
        {
            using JsonDocument json = JsonDocument.Parse(bytes);
            JsonElement root = json.RootElement;
            if (root.ValueKind == JsonValueKind.Object
                && root.TryGetProperty("cavaxisExercise", out JsonElement version) && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out int v) && v == ExerciseFile.CurrentVersion
                && root.TryGetProperty("seed", out JsonElement seed) && seed.ValueKind == JsonValueKind.Number && seed.TryGetUInt64(out ulong s)
                && root.TryGetProperty("level", out JsonElement level) && level.ValueKind == JsonValueKind.Number && level.TryGetInt32(out int l) && l >= 1 && l <= ExerciseMaker.HighestLevel)
            {
                return (s, l);
            }
        }
        catch (JsonException)
        {
            // Told below, as is every other question that is none.
        }

        throw new InputFaultException(new InputFault(
            FaultCode.MalformedText, InputFault.Shown(path), "not a question of this program", "question.json as `exercise new` wrote it, version 1", "Make the exercise again with its seed and level."));
    }

    private void Tell(ExerciseScore score)
    {
        output.Line(string.Create(CultureInfo.InvariantCulture, $"{score.Points} of 100 points{(score.Found ? ": right" : string.Empty)}."));
        if (score.DistanceMm is double distance)
        {
            output.Wrapped("Distance: ", string.Create(
                CultureInfo.InvariantCulture, $"{distance:F1} mm ({score.AlongMm:F1} along the cannula, positive beyond the tip; {score.AcrossMm:F1} across); up to {score.ToleranceMm:F1} mm counts as found."));
        }

        foreach (string sentence in score.Explanation)
        {
            output.Wrapped("– ", sentence);
        }

        output.Line(score.Truth.InView
            ? string.Create(CultureInfo.InvariantCulture, $"The tip: column {score.Truth.X:F0}, row {score.Truth.Y:F0}.")
            : "The tip: not in view.");
        output.Line();
        output.Wrapped(string.Empty, Planner.Caution);
    }
}
