namespace Cavaxis.Imaging.Tips;

/// <summary>Which way the device takes through the right atrium.</summary>
public enum DeviceCourse
{
    /// <summary>Not seen: anything from straight through to along the wall.</summary>
    Unknown,

    /// <summary>Straight from mouth to mouth.</summary>
    Straight,

    /// <summary>The way of a stiff device, along which the axis is measured.</summary>
    AlongAxis,

    /// <summary>Bulging along the free wall.</summary>
    AlongWall,
}
