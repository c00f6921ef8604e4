namespace Cavaxis.Cli.EchoVerbs;

/// <summary>The question of an exercise, as it lies beside its picture. The answer is not in it: it is computed again from seed and level.</summary>
/// <param name="CavaxisExercise">Version of the format.</param>
/// <param name="Seed">Seed.</param>
/// <param name="Level">Level.</param>
/// <param name="LevelWords">What the level is about.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Picture">Name of the picture.</param>
/// <param name="WidthPixels">Columns.</param>
/// <param name="HeightPixels">Rows.</param>
/// <param name="MmPerPixel">From pixel to pixel, both ways.</param>
/// <param name="Caution">Words that every screen shows.</param>
public sealed record ExerciseFile(
    int CavaxisExercise, ulong Seed, int Level, string LevelWords, string Question, string Picture, int WidthPixels, int HeightPixels, double MmPerPixel, string Caution)
{
    /// <summary>Version this program writes and reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Name of the question in its folder.</summary>
    public const string QuestionName = "question.json";

    /// <summary>Name of the picture in its folder.</summary>
    public const string PictureName = "picture.png";
}
