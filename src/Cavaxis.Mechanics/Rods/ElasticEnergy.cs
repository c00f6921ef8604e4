namespace Cavaxis.Mechanics.Rods;

/// <summary>Energy stored in a rod, by kind, N mm.</summary>
/// <param name="StretchNMm">Stretch.</param>
/// <param name="BendingNMm">Bending.</param>
/// <param name="TwistNMm">Twist.</param>
public readonly record struct ElasticEnergy(double StretchNMm, double BendingNMm, double TwistNMm)
{
    /// <summary>Sum.</summary>
    public double TotalNMm => StretchNMm + BendingNMm + TwistNMm;
}
