namespace Cavaxis.Web.Pointing;

/// <summary>A part of a picture that has a name, such as a calibrated region.</summary>
/// <param name="Left">First column.</param>
/// <param name="Top">First row.</param>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
/// <param name="Name">Name, written at its upper edge.</param>
public sealed record PictureBox(double Left, double Top, double Width, double Height, string Name);
