using System.Globalization;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>What a person gives to trace an axis: two places inside of the veins and the landmarks seen on the pictures.</summary>
public sealed record TraceRequest
{
    private const double ShortestMm = 30;

    /// <summary>A request.</summary>
    /// <param name="oneSeed">A place inside of the veins, mm.</param>
    /// <param name="otherSeed">Another one, 30 mm or more higher or lower; the order does not matter.</param>
    /// <param name="confirmed">Landmarks pointed out by a person; each once.</param>
    /// <exception cref="InputFaultException">The seeds lie too near to each other, or a landmark is given twice or is none that lies on a centreline.</exception>
    public TraceRequest(Vector3D oneSeed, Vector3D otherSeed, IReadOnlyList<ConfirmedLandmark>? confirmed = null)
    {
        _ = Require.InRange(
            Math.Abs(oneSeed.Z - otherSeed.Z), ShortestMm, 2000, "seed.z", "Give one seed on the side of the neck and one on the side of the groin, 30 mm or more apart from head to feet.");
        (UpperSeed, LowerSeed) = oneSeed.Z > otherSeed.Z ? (oneSeed, otherSeed) : (otherSeed, oneSeed);
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

    /// <summary>Landmarks that lie on a centreline between neck and groin.</summary>
    public static IReadOnlyList<CavalLandmark> Accepted { get; } =
    [
        CavalLandmark.BrachiocephalicConfluence, CavalLandmark.Scaj, CavalLandmark.Icaj, CavalLandmark.HepaticVein, CavalLandmark.RenalVein, CavalLandmark.IliacConfluence,
    ];

    /// <summary>The seed nearer to the head, mm.</summary>
    public Vector3D UpperSeed { get; }

    /// <summary>The seed nearer to the feet, mm.</summary>
    public Vector3D LowerSeed { get; }

    /// <summary>Landmarks that a person has pointed out.</summary>
    public IReadOnlyList<ConfirmedLandmark> Confirmed { get; }
}
