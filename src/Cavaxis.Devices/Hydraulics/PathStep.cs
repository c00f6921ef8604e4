namespace Cavaxis.Devices.Hydraulics;

/// <summary>What the main stream meets next on the way from the tip to the hub.</summary>
internal enum PathStepKind
{
    /// <summary>A straight stretch of bore.</summary>
    Run,

    /// <summary>A row of holes.</summary>
    Row,

    /// <summary>A change of bore.</summary>
    Change,
}

/// <summary>One step along the bore, from the tip to the hub, in SI units.</summary>
/// <param name="Kind">Stretch, row or change.</param>
/// <param name="LengthM">Length of a stretch.</param>
/// <param name="DiameterM">Hydraulic diameter of the bore on the hub side.</param>
/// <param name="AreaM2">Bore area on the hub side.</param>
/// <param name="TipAreaM2">Bore area on the tip side.</param>
/// <param name="Row">The row of holes, for a row.</param>
internal readonly record struct PathStep(
    PathStepKind Kind, double LengthM, double DiameterM, double AreaM2, double TipAreaM2, HoleRow Row);
