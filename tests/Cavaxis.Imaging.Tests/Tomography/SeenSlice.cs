namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// Edges of a vessel as a reader saw them on one axial picture, in voxels of that slice counted from the head; not a number where no edge was seen.
/// </summary>
internal readonly record struct SeenSlice(int Slice, double Left, double Right, double Front, double Back)
{
    /// <summary>Column of the middle.</summary>
    public double Column => (Left + Right) / 2;

    /// <summary>Row of the middle.</summary>
    public double Row => (Front + Back) / 2;

    /// <summary>All four edges were seen.</summary>
    public bool IsClosed => double.IsFinite(Column) && double.IsFinite(Row);

    /// <summary>Diameter of the circle with the area of the ellipse within the edges, voxels.</summary>
    public double Diameter => Math.Sqrt((Right - Left) * (Back - Front));

    /// <summary>How far a place lies outside of the edges that were seen, voxels; 0 within.</summary>
    public double Outside(double column, double row) => new[] { Left - column, column - Right, Front - row, row - Back }.Where(double.IsFinite).Append(0).Max();

    /// <summary>How far a place lies from the middle, voxels.</summary>
    public double FromMiddle(double column, double row) => Math.Sqrt(((Column - column) * (Column - column)) + ((Row - row) * (Row - row)));
}
