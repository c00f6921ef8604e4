using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Imaging.Exercises;
using Cavaxis.Planning.Json;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Png;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.EchoVerbs;

/// <summary><c>exercise new</c>: picture and question of a find-the-tip exercise.</summary>
/// <param name="output">Where results go.</param>
public sealed class ExerciseNewCommand(CommandOutput output) : Command<ExerciseNewCommand.Settings>
{
    /// <summary>What <c>exercise new</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>Seed.</summary>
        [CommandOption("--seed <NUMBER>")]
        [Description("Seed [[1]]; the same seed and level give the same exercise.")]
        public string Seed { get; init; } = "1";

        /// <summary>Level.</summary>
        [CommandOption("--level <LEVEL>")]
        [Description("Difficulty, 1 to 5 [[1]].")]
        public string Level { get; init; } = "1";

        /// <summary>Folder.</summary>
        [CommandOption("--out <FOLDER>")]
        [Description("Folder to write into; made where there is none.")]
        public string Out { get; init; } = string.Empty;

        /// <summary>JSON instead of words.</summary>
        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        List<InputFault> faults = [];
        ulong seed = PlanOptionsReader.Whole("--seed", settings.Seed, 0, PlanOptionsReader.LargestSeed, faults);
        int level = (int)PlanOptionsReader.Whole("--level", settings.Level, 1, ExerciseMaker.HighestLevel, faults);
        if (settings.Out.Length == 0)
        {
            faults.Add(new InputFault(FaultCode.BadOption, "--out", "(nothing)", "a folder", "Name a folder to write picture and question into."));
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        Exercise exercise = ProgressNote.While(output, "Rendering", () => ExerciseMaker.Make(seed, level));
        ExerciseFile file = new(
            ExerciseFile.CurrentVersion, seed, level, ExerciseMaker.Levels[level - 1], exercise.Question, ExerciseFile.PictureName,
            exercise.Frame.Image.Width, exercise.Frame.Image.Height, exercise.Frame.Grid.MmPerPixel, Planner.Caution);
        Folder(settings.Out);
        InputFile.WriteWhole(Path.Combine(settings.Out, ExerciseFile.PictureName), PngFrameWriter.Write(exercise.Frame.Image));
        InputFile.WriteWhole(Path.Combine(settings.Out, ExerciseFile.QuestionName), JsonSerializer.SerializeToUtf8Bytes(file, CavaxisJson.Options));
        Tell(settings, file);
        return (int)ExitCode.Done;
    }

    private static void Folder(string path)
    {
        try
        {
            _ = Directory.CreateDirectory(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.UnreadableFile, InputFault.Shown(path), "not writable", "a folder that can be made or written to", "Choose another folder."));
        }
    }

    private void Tell(Settings settings, ExerciseFile file)
    {
        if (settings.Json)
        {
            output.Json(file);
            return;
        }

        output.Line(string.Create(CultureInfo.InvariantCulture, $"Exercise {file.Seed}, level {file.Level} (invented): {file.LevelWords}"));
        output.Wrapped(string.Empty, file.Question);
        output.Wrapped("Picture: ", string.Create(
            CultureInfo.InvariantCulture, $"{Path.Combine(settings.Out, file.Picture)}, {file.WidthPixels} × {file.HeightPixels} pixels, {file.MmPerPixel:F3} mm a pixel."));
        output.Wrapped("Answer with: ", $"./run exercise answer {settings.Out} --at COLUMN,ROW   or   --not-in-view");
        output.Line();
        output.Wrapped(string.Empty, file.Caution);
    }
}
