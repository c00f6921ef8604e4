namespace Cavaxis.Imaging.Measurement;

/// <summary>A number that follows from points in mm.</summary>
/// <param name="mm">x and y of each point, one after the other.</param>
/// <returns>The number.</returns>
internal delegate double PointFunction(ReadOnlySpan<double> mm);
