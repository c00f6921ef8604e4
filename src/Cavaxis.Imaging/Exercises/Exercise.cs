using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Exercises;

/// <summary>One find-the-tip exercise. Invented; the same seed and level give the same.</summary>
/// <param name="Seed">Seed.</param>
/// <param name="Level">Difficulty, 1 to <see cref="ExerciseMaker.HighestLevel"/>.</param>
/// <param name="Question">What is asked, in words, with what the learner would know at the bedside.</param>
/// <param name="Frame">The picture.</param>
/// <param name="Scene">What was looked at.</param>
/// <param name="Probe">With what.</param>
/// <param name="Truth">The answer: not to be shown before the learner's own.</param>
public sealed record Exercise(ulong Seed, int Level, string Question, EchoFrame Frame, EchoScene Scene, Probe Probe, ExerciseTruth Truth);
