using Cavaxis.Imaging.Exercises;

namespace Cavaxis.Cli.EchoVerbs;

/// <summary>A judged answer.</summary>
/// <param name="Seed">Seed of the exercise.</param>
/// <param name="Level">Its level.</param>
/// <param name="Score">Points, distances, explanation and where the tip is.</param>
/// <param name="Caution">Words that every screen shows.</param>
public sealed record ExerciseJudged(ulong Seed, int Level, ExerciseScore Score, string Caution);
