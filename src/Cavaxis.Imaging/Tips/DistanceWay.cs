namespace Cavaxis.Imaging.Tips;

/// <summary>How a distance between landmark and device was measured.</summary>
public enum DistanceWay
{
    /// <summary>In a straight line, through the atrium where it lies between.</summary>
    Straight,

    /// <summary>Along the vein.</summary>
    AlongVein,
}
