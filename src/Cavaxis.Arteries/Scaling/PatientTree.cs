using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Scaling;

/// <summary>The tree of one patient, without any device.</summary>
/// <param name="Segments">The segments in the order of the table.</param>
/// <param name="Beds">What stands behind the ends.</param>
/// <param name="ReferencePressurePa">Pressure at which the radii hold, Pa.</param>
/// <param name="ProfileExponent">Exponent ζ of the velocity profile.</param>
/// <param name="StiffnessFactor">Factor on the modulus of the table.</param>
/// <param name="AccessDiametersMm">Diameters of the four access arteries, in the order of <see cref="AccessArtery"/>, mm.</param>
public sealed record PatientTree(
    ImmutableArray<PatientSegment> Segments,
    BedState Beds,
    double ReferencePressurePa,
    double ProfileExponent,
    double StiffnessFactor,
    ImmutableArray<Estimate> AccessDiametersMm);
