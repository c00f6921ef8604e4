using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Anatomy.Axis;

/// <summary>
/// The edges people take as the cavo-atrial junctions, and the step from each to the model's own edge. Published carina
/// to SCAJ distances of 24, 35, 40 and 54 mm differ mostly by this choice.
/// </summary>
public static class JunctionEdges
{
    /// <summary>The model's own superior edge.</summary>
    public const JunctionEdge OwnSuperior = JunctionEdge.AppendageBorder;

    /// <summary>The model's own inferior edge: the lower one, which bicaval ultrasound sees.</summary>
    public const JunctionEdge OwnInferior = JunctionEdge.EustachianRim;

    // Half of the readers take the border of the appendage, a quarter each of the other two edges:
    // √(¼(6² + 7²) + ¼(14² + 8²)).
    private const double UnknownSuperiorSdMm = 9.3;

    // Three of four readers take the rim: √(¼(17.6² + 6.6²)).
    private const double UnknownInferiorSdMm = 9.4;

    /// <summary>All edges at the superior junction, then all at the inferior one; the unknown edge stands in
    /// both.</summary>
    public static IReadOnlyList<EdgeDefinition> Table { get; } =
    [
        new(JunctionEdge.AppendageBorder, true, 0, 0, new("own edge, by definition", Certainty.ClosedForm)),
        new(
            JunctionEdge.CristaTerminalis, true, 6, 7,
            new(
                "between 14 mm (carina to SCAJ 54.3 against 40.3, two CT series) and 2 mm (height/10 + 0.5 against + 0.3 cm)",
                Certainty.Assumption)),
        new(
            JunctionEdge.FirstAtrialSlice, true, -14, 8,
            new(
                "carina to atrial inlet median 24 against 40.3 mm, two CT series, rounded towards zero",
                Certainty.Derived)),
        new(
            JunctionEdge.Unknown, true, 0, UnknownSuperiorSdMm,
            new("spread over the three edges, weights 1/2, 1/4, 1/4", Certainty.Assumption)),
        new(JunctionEdge.EustachianRim, false, 0, 0, new("own edge, by definition", Certainty.ClosedForm)),
        new(
            JunctionEdge.MyocardialEdge, false, -17.6, 6.6,
            new("17.6 mm, SD 6.6, 30 hearts (Heart Rhythm 2006;3:1481)", Certainty.Seen)),
        new(
            JunctionEdge.Unknown, false, 0, UnknownInferiorSdMm,
            new("spread over the two edges, weights 3/4, 1/4", Certainty.Assumption)),
    ];

    /// <summary>The definition of a superior edge.</summary>
    /// <param name="edge">The edge.</param>
    /// <returns>Its row.</returns>
    /// <exception cref="InputFaultException">The edge belongs to the inferior junction.</exception>
    public static EdgeDefinition Superior(JunctionEdge edge) => Find(edge, true);

    /// <summary>The definition of an inferior edge.</summary>
    /// <param name="edge">The edge.</param>
    /// <returns>Its row.</returns>
    /// <exception cref="InputFaultException">The edge belongs to the superior junction.</exception>
    public static EdgeDefinition Inferior(JunctionEdge edge) => Find(edge, false);

    private static EdgeDefinition Find(JunctionEdge edge, bool isSuperior)
    {
        List<string> accepted = [];
        foreach (EdgeDefinition row in Table)
        {
            if (row.IsSuperior == isSuperior)
            {
                if (row.Edge == edge)
                {
                    return row;
                }

                accepted.Add(row.Edge.ToString());
            }
        }

        throw new InputFaultException(new InputFault(
            FaultCode.Contradiction,
            isSuperior ? "superiorEdge" : "inferiorEdge",
            edge.ToString(),
            string.Join(", ", accepted),
            "Name an edge of that junction, or leave it out where the measurement does not touch it."));
    }
}
