namespace Cavaxis.Imaging.Exercises;

/// <summary>A place in the picture that can be taken for the tip.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">In words, such as "hole group 'stage 2'".</param>
/// <param name="X">Column, pixels.</param>
/// <param name="Y">Row, pixels.</param>
/// <param name="FromTipMm">Distance from the tip along the cannula, mm; negative beyond it.</param>
public sealed record Lookalike(LookalikeKind Kind, string Name, double X, double Y, double FromTipMm);
