namespace Cavaxis.Web.Pointing;

/// <summary>A line drawn over a picture that is not moved by hand, such as a centreline or a traced envelope.</summary>
/// <param name="Points">Its points.</param>
/// <param name="Name">What it is, for whoever does not see it.</param>
/// <param name="IsDashed">True where it is a guess.</param>
public sealed record PictureLine(IReadOnlyList<PicturePoint> Points, string Name, bool IsDashed = false);
