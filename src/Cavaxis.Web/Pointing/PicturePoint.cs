namespace Cavaxis.Web.Pointing;

/// <summary>A place in a picture, pixels from its upper left corner; fractions are taken.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct PicturePoint(double X, double Y);
