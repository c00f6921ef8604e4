namespace Cavaxis.Circulation.Equations;

/// <summary>The mixed volumes that carry gas: ten parts of the axis first, in the order of <see cref="Axis.AxisCell"/>.</summary>
internal static class GasNode
{
    public const int RightVentricle = 10;
    public const int PulmonaryArtery = 11;
    public const int PulmonaryVein = 12;
    public const int LeftAtrium = 13;
    public const int LeftVentricle = 14;
    public const int Ascending = 15;
    public const int Arch = 16;
    public const int Descending = 17;
    public const int UpperVein = 18;
    public const int SplanchnicVein = 19;
    public const int LowerVein = 20;
    public const int Coronary = 21;
    public const int DrainageLine = 22;
    public const int MembraneLung = 23;
    public const int ReturnLine = 24;
    public const int Count = 25;
}
