using System.Globalization;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>What a person gives to trace an axis: places inside of the veins and the landmarks seen on the pictures.</summary>
public sealed record TraceRequest
{
    private const double ShortestMm = 30;
    private const double LeastApartMm = 5;

    /// <summary>A request.</summary>
    /// <param name="seeds">Two or more places inside of the veins, mm; the outer ones 30 mm or more apart from head to feet. The order does not matter.
    /// More than two lead the way where veins are collapsed or look like their surroundings.</param>
    /// <param name="confirmed">Landmarks pointed out by a person; each once.</param>
    /// <exception cref="InputFaultException">There are too few seeds or they lie too near to each other, or a landmark is given twice or is none that lies on a centreline.</exception>
    public TraceRequest(IReadOnlyList<Vector3D> seeds, IReadOnlyList<ConfirmedLandmark>? confirmed = null)
    {
        ArgumentNullException.ThrowIfNull(seeds);
        if (seeds.Count < 2)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "seed", seeds.Count.ToString(CultureInfo.InvariantCulture), "2 or more places", "Give one seed on the side of the neck and one on the side of the groin."));
        }

        Seeds = [.. seeds.OrderByDescending(static s => s.Z)];
        _ = Require.InRange(
            Seeds[0].Z - Seeds[^1].Z, ShortestMm, 2000, "seed.z", "Give one seed on the side of the neck and one on the side of the groin, 30 mm or more apart from head to feet.");
        for (int i = 1; i < Seeds.Count; i++)
        {
            _ = Require.InRange((Seeds[i] - Seeds[i - 1]).Length, LeastApartMm, 2000, "seed", "Leave out seeds that lie next to each other.");
        }

        Confirmed = confirmed ?? [];
        HashSet<CavalLandmark> seen = [];
        foreach (ConfirmedLandmark landmark in Confirmed)
        {
            if (!Accepted.Contains(landmark.Landmark) || !seen.Add(landmark.Landmark))
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction, "confirm", landmark.Landmark.ToString(), string.Create(CultureInfo.InvariantCulture, $"each at most once of {string.Join(", ", Accepted)}"), "Confirm each landmark once."));
            }
        }
    }

    /// <summary>A request with two seeds.</summary>
    /// <param name="oneSeed">A place inside of the veins, mm.</param>
    /// <param name="otherSeed">Another one, 30 mm or more higher or lower.</param>
    /// <param name="confirmed">Landmarks pointed out by a person; each once.</param>
    /// <exception cref="InputFaultException">See the other constructor.</exception>
    public TraceRequest(Vector3D oneSeed, Vector3D otherSeed, IReadOnlyList<ConfirmedLandmark>? confirmed = null)
        : this([oneSeed, otherSeed], confirmed)
    {
    }

    /// <summary>Landmarks that lie on a centreline between neck and groin.</summary>
    public static IReadOnlyList<CavalLandmark> Accepted { get; } =
    [
        CavalLandmark.BrachiocephalicConfluence, CavalLandmark.Scaj, CavalLandmark.Icaj, CavalLandmark.HepaticVein, CavalLandmark.RenalVein, CavalLandmark.IliacConfluence,
    ];

    /// <summary>The seeds from head to feet, mm.</summary>
    public IReadOnlyList<Vector3D> Seeds { get; }

    /// <summary>Landmarks that a person has pointed out.</summary>
    public IReadOnlyList<ConfirmedLandmark> Confirmed { get; }
}
